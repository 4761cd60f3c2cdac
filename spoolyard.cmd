@echo off
rem Starts Spoolyard; builds it first when it was never built or the sources have changed.
setlocal
set "home=%~dp0"
set "jar=%home%analysis\target\spoolyard.jar"
set "stamp=%home%analysis\target\spoolyard.built"

set "java=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "java=%JAVA_HOME%\bin\java.exe"
"%java%" -version >nul 2>&1
if errorlevel 1 (
  echo Java is missing. Install a JDK 17 or newer, or set JAVA_HOME to one. 1>&2
  exit /b 2
)

powershell -NoProfile -Command ^
  "$h=$env:home; $b=@($env:jar,$env:stamp | Where-Object {Test-Path $_} | ForEach-Object {(Get-Item $_).LastWriteTimeUtc} | Sort-Object)[-1];" ^
  "if (-not (Test-Path $env:jar)) {exit 1};" ^
  "$s=@(Get-Item (Join-Path $h 'pom.xml'))+@(Get-ChildItem $h -Directory | ForEach-Object {Get-ChildItem (Join-Path $_.FullName 'pom.xml'),(Join-Path $_.FullName 'src\main') -Recurse -ErrorAction SilentlyContinue});" ^
  "if ($s | Where-Object {$_.LastWriteTimeUtc -gt $b}) {exit 1}"
if errorlevel 1 (
  echo Building Spoolyard, only when its sources have changed ... 1>&2
  pushd "%home%"
  call mvn -q -B -DskipTests package 1>&2
  if errorlevel 1 (
    popd
    echo The build failed; its messages stand above. 1>&2
    exit /b 1
  )
  popd
  type nul > "%stamp%"
)

"%java%" -XX:+UseParallelGC -jar "%jar%" %*
exit /b %errorlevel%
