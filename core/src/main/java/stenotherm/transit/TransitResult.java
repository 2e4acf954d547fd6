package stenotherm.transit;

import static stenotherm.base.Temperatures.toCelsius;
import static stenotherm.transit.TransitOutput.OutputQuantity.COLDEST;
import static stenotherm.transit.TransitOutput.OutputQuantity.HEAT_FLOW;
import static stenotherm.transit.TransitOutput.OutputQuantity.HOTTEST;
import static stenotherm.transit.TransitOutput.OutputQuantity.LIQUID_FRACTION;
import static stenotherm.transit.TransitOutput.OutputQuantity.MEAN;
import static stenotherm.transit.TransitOutput.OutputQuantity.PLACE;
import static stenotherm.transit.TransitOutput.OutputQuantity.SURFACE;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import java.util.function.DoubleBinaryOperator;
import org.jspecify.annotations.Nullable;
import stenotherm.animal.Exposure;
import stenotherm.animal.Limit;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Outcome;
import stenotherm.base.Suggestions;
import stenotherm.base.Times;
import stenotherm.conduction.HeatLedger;
import stenotherm.conduction.Port;
import stenotherm.conduction.TransientSolution;
import stenotherm.journey.Journey;
import stenotherm.parcel.Container;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.transit.ClimateColumns.OfRoom;
import stenotherm.transit.ClimateColumns.OfWarmer;
import stenotherm.warmer.IronPowder;

/**
 * The history of a parcel on a journey.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class TransitResult {
  private final ParcelBody body;
  private final Journey journey;
  private final Variation variation;
  private final Outcome outcome;
  private final History history;
  private final Account account;

  /** What a run recorded; one row of values for each time. */
  @SuppressWarnings("ArrayRecordComponent") // internal; never compared or printed
  record History(
      double[] times,
      double[][] rows,
      @Nullable Snapshot coldest,
      @Nullable Snapshot hottest,
      List<Recorder.@Nullable FillDifference> fill,
      Climate climate) {}

  /** Gases and warmers, one row for each time. */
  @SuppressWarnings("ArrayRecordComponent") // internal; never compared or printed
  record Climate(ClimateColumns columns, double[][] rows, Breathing breathing) {}

  /** How a run came about. */
  record Account(
      HeatLedger ledger,
      TransientSolution.Work work,
      EngineChoice choice,
      List<LegCoefficients> coefficients) {}

  TransitResult(
      ParcelBody body,
      Journey journey,
      Variation variation,
      Outcome outcome,
      History history,
      Account account) {
    this.body = body;
    this.journey = journey;
    this.variation = variation;
    this.outcome = outcome;
    this.history = history;
    this.account = account;
  }

  /**
   * Returns the parcel.
   *
   * @return the parcel with nominal properties
   */
  public Parcel parcel() {
    return body.parcel();
  }

  /**
   * Returns the journey.
   *
   * @return the journey
   */
  public Journey journey() {
    return journey;
  }

  /**
   * Returns where the uncertain quantities lay in their ranges.
   *
   * @return the variation
   */
  public Variation variation() {
    return variation;
  }

  /**
   * Tells how the run ended.
   *
   * @return the outcome
   */
  public Outcome outcome() {
    return outcome;
  }

  /**
   * Returns this history if it reaches the journey's end.
   *
   * @return this
   * @throws CancellationException if a listener or an interrupt stopped the run
   * @throws IllegalStateException if the run failed; the message names the packing and says why
   */
  public TransitResult requireCompleted() {
    if (outcome instanceof Outcome.Failed failed) {
      throw new IllegalStateException("packing '" + parcel().name() + "': " + failed.reason());
    }
    if (outcome instanceof Outcome.Stopped stopped) {
      throw new CancellationException(stopped.reason());
    }
    return this;
  }

  /**
   * Returns the stored times.
   *
   * @return a copy, since sealing, ascending [s]
   */
  public double[] times() {
    return history.times.clone();
  }

  /**
   * Returns the mean temperature of an animal, a warmer or a pack. Of an animal it stands for the
   * core of the body.
   *
   * @param name name of the cup, the warmer or the pack
   * @return a copy, one value for each stored time [K]
   * @throws InvalidInputException if there is none of that name
   */
  public double[] mean(String name) {
    return column(MEAN, name);
  }

  /**
   * Returns the temperature of the coldest part of an animal.
   *
   * @param cup name of the cup
   * @return a copy, one value for each stored time [K]
   * @throws InvalidInputException if there is no such cup
   */
  public double[] coldest(String cup) {
    return column(COLDEST, cup);
  }

  /**
   * Returns the temperature of the hottest part of an animal or a warmer. Of a warmer, whose heat
   * arises evenly throughout, it is the hottest place anywhere in it, core or surface, and thus at
   * least as hot as its hottest surface.
   *
   * @param name name of the cup or the warmer
   * @return a copy, one value for each stored time [K]
   * @throws InvalidInputException if there is neither of that name
   */
  public double[] hottest(String name) {
    return column(HOTTEST, name);
  }

  /**
   * Returns the melted part of a pack.
   *
   * @param pack name of the pack
   * @return a copy, one value for each stored time [-], 0 to 1
   * @throws InvalidInputException if there is no such pack, or it does not melt
   */
  public double[] liquidFraction(String pack) {
    int ofBody = history.climate.columns.ofLiquid(pack);
    return ofBody < 0 ? column(LIQUID_FRACTION, pack) : climate(ofBody);
  }

  /**
   * Returns the temperature of the hottest place that an animal can reach inside its cup, of the
   * middles of lid, floor and sides.
   *
   * @param cup name of the cup
   * @return a copy, one value for each stored time [K]
   * @throws InvalidInputException if there is no such cup
   */
  public double[] hottestPlace(String cup) {
    return places(cup, Math::max);
  }

  /**
   * Returns the temperature of the coldest place that an animal can reach inside its cup, of the
   * middles of lid, floor and sides.
   *
   * @param cup name of the cup
   * @return a copy, one value for each stored time [K]
   * @throws InvalidInputException if there is no such cup
   */
  public double[] coldestPlace(String cup) {
    return places(cup, Math::min);
  }

  private double[] places(String cup, DoubleBinaryOperator extreme) {
    return extremes(
        ParcelBody.placesInReach(requireCup(cup).name()).stream().map(this::readings).toList(),
        extreme);
  }

  /** The lowest or highest of several columns at each time, in an array of its own. */
  static double[] extremes(List<double[]> columns, DoubleBinaryOperator extreme) {
    double[] found = columns.get(0).clone();
    for (double[] there : columns) {
      Arrays.setAll(found, row -> extreme.applyAsDouble(found[row], there[row]));
    }
    return found;
  }

  /**
   * Returns the oxygen in the air that an animal breathes.
   *
   * @param cup name of the cup; in an open one it is the air of the parcel
   * @return a copy, mole fraction at each stored time [-]
   * @throws InvalidInputException if there is no such cup
   */
  public double[] oxygen(String cup) {
    return climate(ofRoom(cup, OfRoom.OXYGEN));
  }

  /**
   * Returns the carbon dioxide in the air that an animal breathes.
   *
   * @param cup name of the cup
   * @return a copy, mole fraction at each stored time [-]
   * @throws InvalidInputException if there is no such cup
   */
  public double[] carbonDioxide(String cup) {
    return climate(ofRoom(cup, OfRoom.CARBON_DIOXIDE));
  }

  /**
   * Returns the oxygen that an animal breathes, as a fraction of air at sea level with the same
   * partial pressure: in thin air less than {@link #oxygen}. The pressure goes over to that of a
   * leg within a while, as aircraft climb.
   *
   * @param cup name of the cup
   * @return a copy, mole fraction at each stored time [-]
   * @throws InvalidInputException if there is no such cup
   */
  public double[] oxygenAtSeaLevel(String cup) {
    return atSeaLevel(oxygen(cup));
  }

  /**
   * Returns the carbon dioxide that an animal breathes, as a fraction of air at sea level with the
   * same partial pressure.
   *
   * @param cup name of the cup
   * @return a copy, mole fraction at each stored time [-]
   * @throws InvalidInputException if there is no such cup
   */
  public double[] carbonDioxideAtSeaLevel(String cup) {
    return atSeaLevel(carbonDioxide(cup));
  }

  private double[] atSeaLevel(double[] fractions) {
    double[] thinness = climate(history.climate.columns.pressure());
    for (int row = 0; row < fractions.length; row++) {
      fractions[row] *= thinness[row];
    }
    return fractions;
  }

  /**
   * Returns the humidity of the air that an animal breathes: its vapour over saturation at the mean
   * temperature of that air. Where a cup cools, bedding and animal are warmer than its air and wet
   * it by their own temperature: it passes 1, as neither mist nor drops on a cup are computed.
   *
   * @param cup name of the cup
   * @return a copy, vapour pressure over its saturation at each stored time [-]
   * @throws InvalidInputException if there is no such cup
   */
  public double[] humidity(String cup) {
    return climate(ofRoom(cup, OfRoom.HUMIDITY));
  }

  /**
   * Returns the water that an animal gives off to its air from sealing on; less than 0 where dew
   * falls on it. What it drinks, or takes up through its skin from wet ground, is not counted; nor
   * is dew on a cup, so that an animal in a dry cup that cools gives off more than this.
   *
   * @param cup name of the cup
   * @return a copy, mass at each stored time [kg]
   * @throws InvalidInputException if there is no such cup
   */
  public double[] waterGivenOff(String cup) {
    return climate(history.climate.columns.ofWater(requireCup(cup).name()));
  }

  /**
   * Returns the air that animals breathed, at its worst.
   *
   * @return the whole run's
   */
  public Breathing breathing() {
    return history.climate.breathing;
  }

  /**
   * Returns the heat that a warmer gives.
   *
   * @param warmer its name
   * @return a copy, power at each stored time [W]
   * @throws InvalidInputException if there is no such warmer
   */
  public double[] power(String warmer) {
    PlacedWarmer placed = requireWarmer(warmer);
    int column = history.climate.columns.ofPower(warmer);
    if (column >= 0) {
      return climate(column);
    }
    double strength = variation.power(placed);
    return Arrays.stream(history.times)
        .map(time -> strength * placed.prescribedPower().before(time))
        .toArray();
  }

  /**
   * Returns the part of a warmer's iron that is burnt.
   *
   * @param warmer its name
   * @return a copy, conversion at each stored time [-]; empty if its power is prescribed
   * @throws InvalidInputException if there is no such warmer
   */
  public double[] conversion(String warmer) {
    requireWarmer(warmer);
    int column = history.climate.columns.of(warmer, OfWarmer.CONVERSION);
    return column < 0 ? new double[0] : climate(column);
  }

  /**
   * Tells what holds a warmer back most.
   *
   * @param warmer its name
   * @return for each stored time; empty if its power is prescribed
   * @throws InvalidInputException if there is no such warmer
   */
  public List<IronPowder.LimitedBy> limitedBy(String warmer) {
    requireWarmer(warmer);
    int column = history.climate.columns.of(warmer, OfWarmer.LIMITED_BY);
    if (column < 0) {
      return List.of();
    }
    return Arrays.stream(climate(column))
        .mapToObj(ordinal -> IronPowder.LimitedBy.values()[(int) ordinal])
        .toList();
  }

  /**
   * Returns the gain of a warmer's loop from heat to temperature to heat: at 1 it goes out in the
   * cold or runs away.
   *
   * @param warmer its name
   * @return a copy, the gain at each stored time [-]; empty if its power is prescribed
   * @throws InvalidInputException if there is no such warmer
   */
  public double[] gain(String warmer) {
    requireWarmer(warmer);
    int column = history.climate.columns.of(warmer, OfWarmer.GAIN);
    return column < 0 ? new double[0] : climate(column);
  }

  private int ofRoom(String cup, OfRoom quantity) {
    return history.climate.columns.of(requireCup(cup).name(), quantity);
  }

  private double[] climate(int column) {
    return Arrays.stream(history.climate.rows).mapToDouble(row -> row[column]).toArray();
  }

  private PlacedWarmer requireWarmer(String name) {
    for (PlacedWarmer warmer : body.parcel().warmers()) {
      if (warmer.name().equals(name)) {
        return warmer;
      }
    }
    throw Suggestions.unknown(
        "warmer", name, body.parcel().warmers().stream().map(PlacedWarmer::name).toList());
  }

  /**
   * Returns the mean surface temperature of an outer face.
   *
   * @param face the face
   * @return a copy, one value for each stored time [K]
   */
  public double[] surface(Face face) {
    double[] sum = new double[history.rows.length];
    double area = 0;
    for (Port.BoundaryPort port : on(face)) {
      area += port.area();
      double[] part = column(SURFACE, port.name());
      for (int row = 0; row < sum.length; row++) {
        sum[row] += port.area() * part[row];
      }
    }
    double whole = area;
    return Arrays.stream(sum).map(value -> value / whole).toArray();
  }

  /**
   * Returns the heat flow into the parcel through an outer face.
   *
   * @param face the face
   * @return a copy, one value for each stored time [W]
   */
  public double[] heatFlow(Face face) {
    double[] sum = new double[history.rows.length];
    for (Port.BoundaryPort port : on(face)) {
      double[] part = column(HEAT_FLOW, port.name());
      for (int row = 0; row < sum.length; row++) {
        sum[row] += part[row];
      }
    }
    return sum;
  }

  /** The face and its parts. */
  private List<Port.BoundaryPort> on(Face face) {
    return body.ports().stream().filter(port -> body.parts().faceOf(port.name()) == face).toList();
  }

  /**
   * Returns the temperature at a place that the model was built {@linkplain ParcelModel#withPlaces
   * with}.
   *
   * @param place its name
   * @return a copy, one value for each stored time [K]
   * @throws InvalidInputException if there is no such place
   */
  public double[] at(String place) {
    return column(PLACE, place);
  }

  /**
   * Returns the mean temperature of the air in a cup.
   *
   * @param cup name of the cup, whether an animal is in it or not
   * @return a copy, one value for each stored time [K]
   * @throws InvalidInputException if there is no such cup
   */
  public double[] airIn(String cup) {
    return column(MEAN, required(cup, parcel().containers()).airBlock());
  }

  /**
   * Returns the packing and how the run ended, and in a second line what befell its animals: of
   * their bodies, the air they breathe and the places in their reach.
   *
   * @return for example "box, 8 h: completed" and "cup: 11.9 °C to 22.0 °C, 5.1 h outside its alarm
   *     band, 20.1 % oxygen at least, places up to 22 °C"
   */
  @Override
  public String toString() {
    List<String> animals = new ArrayList<>();
    for (Container cup : parcel().occupied()) {
      String name = cup.name();
      animals.add(
          String.format(
              Locale.ROOT,
              "%s: %.1f °C to %.1f °C, %.1f h outside its alarm band, %.1f %% oxygen at least,"
                  + " places up to %.0f °C",
              name,
              toCelsius(least(coldest(name))),
              toCelsius(most(hottest(name))),
              history.times.length < 2
                  ? 0
                  : Times.toHours(exposure(name).outside(Limit.ALARM).duration()),
              100 * least(oxygenAtSeaLevel(name)),
              toCelsius(most(hottestPlace(name)))));
    }
    return String.format(
        Locale.ROOT,
        "%s, %.1f h: %s%n%s",
        parcel().name(),
        Times.toHours(journey.duration()),
        ended(),
        animals.isEmpty() ? "no animal" : String.join("; ", animals));
  }

  private static double least(double[] values) {
    return Arrays.stream(values).min().orElse(Double.NaN);
  }

  private static double most(double[] values) {
    return Arrays.stream(values).max().orElse(Double.NaN);
  }

  private String ended() {
    if (outcome instanceof Outcome.Failed failed) {
      return "failed, " + failed.reason();
    }
    return outcome instanceof Outcome.Stopped stopped ? stopped.reason() : "completed";
  }

  private double[] column(TransitOutput.OutputQuantity quantity, String of) {
    return readings(new TransitOutput(quantity, of));
  }

  double[] readings(TransitOutput output) {
    int position = body.positions(List.of(output))[0];
    return Arrays.stream(history.rows).mapToDouble(row -> row[position]).toArray();
  }

  /**
   * Judges what an animal went through until the parcel is opened, by the coldest and the hottest
   * part of its body at each moment. Verdicts are milder: they hold the alarm band against a
   * running mean of the whole body, see {@link stenotherm.animal.Tolerance#averaging}.
   *
   * @param cup name of the cup
   * @return the exposure from sealing until the end of the journey, or of what was computed of it
   * @throws InvalidInputException if there is no such cup, or fewer than two times to judge
   */
  public Exposure exposure(String cup) {
    return exposure(cup, journey.duration());
  }

  /**
   * Judges what an animal went through, up to a time. Between stored times temperatures are linear.
   *
   * @param cup name of the cup
   * @param until last time that counts [s], above 0
   * @return the exposure from sealing until then
   * @throws InvalidInputException if there is no such cup, or fewer than two times to judge
   */
  public Exposure exposure(String cup, double until) {
    double[] stored = history.times;
    int count = 0;
    while (count < stored.length && stored[count] <= until + 1e-6) {
      count++;
    }
    boolean cut = count > 0 && count < stored.length && until > stored[count - 1] + 1e-6;
    return Exposure.of(
        requireCup(cup).occupant().orElseThrow().animal().tolerance(),
        upTo(stored, count, cut, until),
        upTo(coldest(cup), count, cut, until),
        upTo(hottest(cup), count, cut, until));
  }

  /** The first values and, if cut between two of them, the one on the line between them. */
  private double[] upTo(double[] values, int count, boolean cut, double until) {
    if (!cut) {
      return Arrays.copyOf(values, count);
    }
    double left = history.times[count - 1];
    double fraction = (until - left) / (history.times[count] - left);
    double[] some = Arrays.copyOf(values, count + 1);
    some[count] = values[count - 1] + fraction * (values[count] - values[count - 1]);
    return some;
  }

  private Container requireCup(String name) {
    return required(name, parcel().occupied());
  }

  private static Container required(String name, List<Container> cups) {
    for (Container cup : cups) {
      if (cup.name().equals(name)) {
        return cup;
      }
    }
    throw Suggestions.unknown("cup", name, cups.stream().map(Container::name).toList());
  }

  /**
   * Returns the moment when the cold margin of an animal was smallest.
   *
   * @return that stored time and its field
   * @throws IllegalStateException if the run failed before it stored anything
   */
  public Snapshot coldestMoment() {
    return require(history.coldest);
  }

  /**
   * Returns the moment when the hot margin of an animal was smallest.
   *
   * @return that stored time and its field
   * @throws IllegalStateException if the run failed before it stored anything
   */
  public Snapshot hottestMoment() {
    return require(history.hottest);
  }

  private static Snapshot require(@Nullable Snapshot snapshot) {
    if (snapshot == null) {
      throw new IllegalStateException("the run stored nothing");
    }
    return snapshot;
  }

  /**
   * Returns where the heat went.
   *
   * @return the ledger
   */
  public HeatLedger ledger() {
    return account.ledger;
  }

  /**
   * Returns what the run cost.
   *
   * @return steps and iterations
   */
  public TransientSolution.Work work() {
    return account.work;
  }

  /**
   * Returns the size of the grid.
   *
   * @return number of solid cells
   */
  public int cells() {
    return account.choice.cells();
  }

  /**
   * Tells what solved the heat equation and, where it is not what was asked for, why.
   *
   * @return for example "reduced model, 52 modes for 12,000 cells" or "full solver, 12,000 cells:
   *     coefficients follow the temperatures"
   */
  public String engine() {
    String cells = String.format(Locale.ROOT, "%,d cells", account.choice.cells());
    Reduction reduction = account.choice.reduction();
    if (reduction != null) {
      return "reduced model, " + reduction.modes() + " modes for " + cells;
    }
    String reason = account.choice.reason();
    return "full solver, " + cells + (reason.isEmpty() ? "" : ": " + reason);
  }

  /**
   * Returns the reduced model that ran instead of the full solver.
   *
   * @return the reduction; empty if the full solver ran
   */
  public Optional<Reduction> reduction() {
    return Optional.ofNullable(account.choice.reduction());
  }

  /**
   * Returns the estimated error of the reduction in an animal's mean temperature.
   *
   * @param cup name of the cup
   * @return the estimate of {@link Reduction#errors} [K]; 0 if the full solver ran
   */
  public double reductionErrorOfMean(String cup) {
    return reductionError(MEAN, cup);
  }

  /**
   * Returns the estimated error of the reduction in an animal's coldest temperature.
   *
   * @param cup name of the cup
   * @return the estimate of {@link Reduction#errors} [K]; 0 if the full solver ran
   */
  public double reductionErrorOfColdest(String cup) {
    return reductionError(COLDEST, cup);
  }

  /**
   * Returns the estimated error of the reduction in an animal's hottest temperature.
   *
   * @param cup name of the cup
   * @return the estimate of {@link Reduction#errors} [K]; 0 if the full solver ran
   */
  public double reductionErrorOfHottest(String cup) {
    return reductionError(HOTTEST, cup);
  }

  private double reductionError(TransitOutput.OutputQuantity quantity, String cup) {
    TransitOutput output = new TransitOutput(quantity, requireCup(cup).name());
    return reduction().map(of -> of.errors().get(output)).orElse(0.0);
  }

  /**
   * Tells by how much a coefficient would still change if it were taken again at the mean
   * temperatures of its stage: what the search for the coefficients left.
   *
   * @return the largest ratio of a new and an old surface coefficient or conductivity of a block,
   *     the larger over the smaller, less one [-]; empty if coefficients were not found beforehand
   */
  public OptionalDouble coefficientChange() {
    double change = account.choice.change();
    return Double.isNaN(change) ? OptionalDouble.empty() : OptionalDouble.of(change);
  }

  /**
   * Returns the coefficients that each leg was computed with.
   *
   * @return one for each leg that was begun; unmodifiable
   */
  public List<LegCoefficients> coefficients() {
    return List.copyOf(account.coefficients);
  }

  /**
   * Returns the cautions that go with the result: what the computation leaves out here. Those of an
   * animal are in its {@link stenotherm.animal.Animal#cautions() entry}; what befell it tell {@link
   * #exposure}, {@link #breathing} and {@link #hottestPlace}.
   *
   * @return cautions as sentences; unmodifiable
   */
  public List<String> cautions() {
    return TransitCautions.of(body.parcel(), journey, history.fill);
  }
}
