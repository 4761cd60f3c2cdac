package spoolyard.core.process;

import spoolyard.core.record.LineState;

/** Shows each step of a line's program on its clock, its strands and its changeover log. */
final class LineSteps implements Program.Listener {
    private final World world;
    private final LineProcess line;
    private final StrandGroup strands;
    private final ChangeoverLog changeovers;

    LineSteps(World world, LineProcess line, StrandGroup strands, ChangeoverLog changeovers) {
        this.world = world;
        this.line = line;
        this.strands = strands;
        this.changeovers = changeovers;
    }

    @Override
    public void stepWaits(Step step) {
        if (step.isChangeover()) {
            changeovers.touch();
        }
        strands.advance();
        line.ledger().materials.takesCompound(false);
        waste(step.waste().alsoWhileWaiting() ? step.waste() : Step.Waste.NONE);
        line.enter(LineState.WAITING_FOR_CREW);
    }

    @Override
    public void stepBegins(Step step, long waitedTicks) {
        line.stepBegins(waitedTicks);
        changeovers.stepBegins(step, waitedTicks);
        strands.advance();
        line.ledger().materials.takesCompound(step.isCompound());
        if (step.isHeatUp()) {
            line.clock().heat().heatUpBegins();
        } else if (step.isTemperatureMove()) {
            line.clock().heat().setPointsMove();
        }
        waste(step.waste());
        line.enter(step.state());
        if (world.log().isOn()) {
            world.tell(line.description().name(), step.name(), step.state().label());
        }
    }

    @Override
    public void stepEnds(Step step) {
        strands.advance();
        changeovers.stepEnds(step);
        line.ledger().materials.takesCompound(false);
        if (step.isHeatUp()) {
            line.clock().heat().heatUpEnds();
        }
    }

    @Override
    public void programEnds() {
        waste(Step.Waste.NONE);
        line.programEnds();
    }

    private void waste(Step.Waste waste) {
        strands.feedWaste(waste, line.orders().wasteKgPerM());
        line.draw(waste.kgPerS());
    }
}
