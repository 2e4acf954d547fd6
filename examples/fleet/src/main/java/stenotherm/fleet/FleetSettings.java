package stenotherm.fleet;

import stenotherm.base.Checks;

/**
 * How the lanes are judged, once their packings are ready.
 *
 * @param out folder of the results, in any file system that Spark knows
 * @param points journeys of each day and packing, in sixteens: a power of two
 * @param partitions tasks that lanes are divided into, or 0 to let the program choose
 * @param lanesAtATime lanes that are judged and written together, at least 1
 */
record FleetSettings(String out, int points, int partitions, int lanesAtATime) {
  FleetSettings {
    Checks.name("folder of the results", out);
    JudgeDays.many(points, 1);
  }

  /** The folder of the table. */
  String table() {
    return out + "/odds";
  }
}
