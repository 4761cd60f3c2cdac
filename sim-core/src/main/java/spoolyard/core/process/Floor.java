package spoolyard.core.process;

import spoolyard.core.policy.PurgeTable;

/**
 * What the lines share.
 *
 * @param desk calls people
 * @param rack takes full spools
 * @param orders hands out orders
 * @param purges purge of every changeover
 * @param flow counts spools
 * @param losses takes spools that were good off the books
 * @param dryers dryers and blenders shared by the lines
 * @param stores resin, colour, spools and cartons
 */
record Floor(
        CrewDesk desk,
        Rack rack,
        OrderDesk orders,
        PurgeTable purges,
        SpoolFlow flow,
        Losses losses,
        SharedDryers dryers,
        Stores stores) {}
