package stenotherm.fleet;

import java.util.ArrayList;
import java.util.List;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import org.apache.spark.sql.types.DataTypes;
import org.apache.spark.sql.types.StructType;
import stenotherm.decision.Departure;
import stenotherm.decision.JourneyOdds;
import stenotherm.study.Odds;

/**
 * How a packing fares on a lane on one day.
 *
 * @param lane the lane
 * @param packing name of the packing
 * @param journeys how many journeys the odds are counted from
 * @param departure the day with its odds
 * @param madeOf fingerprint of all that the odds depend on
 */
record OddsRow(Lane lane, String packing, int journeys, Departure departure, String madeOf) {
  static final String LANE = "lane";
  static final String DAY = "day";
  static final String PACKING = "packing";
  static final String JOURNEYS = "journeys";
  static final String MADE_OF = "made_of";

  /** What odds are of, in the order of their columns. */
  private static final List<String> HARMS =
      List.of("within", "not_too_cold", "not_too_hot", "enough_air", "not_burnt");

  /** The columns of the table that is written. */
  static final StructType SCHEMA = schema();

  private static StructType schema() {
    StructType schema =
        new StructType()
            .add(LANE, DataTypes.StringType, false)
            .add(DAY, DataTypes.DateType, false)
            .add(PACKING, DataTypes.StringType, false)
            .add("origin", DataTypes.StringType, false)
            .add("destination", DataTypes.StringType, false)
            .add(JOURNEYS, DataTypes.IntegerType, false);
    for (String harm : HARMS) {
      schema =
          schema
              .add(harm, DataTypes.DoubleType, false)
              .add(harm + "_low", DataTypes.DoubleType, false)
              .add(harm + "_high", DataTypes.DoubleType, false);
    }
    return schema
        .add("verdict", DataTypes.StringType, false)
        .add(MADE_OF, DataTypes.StringType, false);
  }

  /** The row of the table. */
  Row row() {
    JourneyOdds odds = departure.odds();
    List<Object> values = new ArrayList<>();
    values.add(lane.name());
    values.add(departure.journey().sealing().toLocalDate());
    values.add(packing);
    values.add(lane.origin());
    values.add(lane.destination());
    values.add(journeys);
    for (Odds each :
        List.of(
            odds.within(),
            odds.notTooCold(),
            odds.notTooHot(),
            odds.enoughAir(),
            odds.notBurnt())) {
      values.add(each.within());
      values.add(each.low());
      values.add(each.high());
    }
    values.add(odds.level().words());
    values.add(madeOf);
    return RowFactory.create(values.toArray());
  }
}
