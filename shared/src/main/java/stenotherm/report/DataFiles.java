package stenotherm.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import stenotherm.base.Face;
import stenotherm.conduction.HeatLedger;
import stenotherm.decision.Assessment;
import stenotherm.decision.ChangesTried;
import stenotherm.decision.DelayMargin;
import stenotherm.decision.Level;
import stenotherm.decision.Margin;
import stenotherm.decision.Sensitivity;
import stenotherm.decision.Side;
import stenotherm.journey.Journey;
import stenotherm.parcel.Container;
import stenotherm.parcel.PlacedPack;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.scenario.Scenario;
import stenotherm.study.OddsByCause;
import stenotherm.study.Share;
import stenotherm.study.StudyResult;
import stenotherm.transit.LegCoefficients;
import stenotherm.transit.TransitResult;
import stenotherm.words.CsvText;
import stenotherm.words.FaceNames;

/** The files for other programs: all digits, SI units. */
final class DataFiles {
  private static final DateTimeFormatter DATE_AND_CLOCK =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss", Locale.ROOT);

  private static final DateTimeFormatter CLOCK =
      DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);

  /** Shares of journeys at which margins are told. */
  private static final double[] QUANTILES = {0.05, 0.25, 0.5, 0.75, 0.95};

  private DataFiles() {}

  static String summary(ComparisonReport report) {
    Scenario scenario = report.scenario();
    List<Judged> rows = report.rows();
    ObjectNode root = JsonText.object();
    VerdictWords verdicts = new VerdictWords(new Words(scenario));
    root.put("format", 7);
    root.put("title", scenario.title());
    root.put("headline", verdicts.headline(report));
    root.put("units_of_sentences", scenario.units().label());
    root.put("dated", scenario.plan().isDated());
    root.put("planned_duration_s", scenario.journey().duration());
    root.put("longest_hold_s", scenario.longestHold());
    report
        .changes()
        .ifPresent(
            changes -> {
              ChangesTried tried = changes.tried();
              root.put("packing_changed", changes.row().label());
              tried
                  .best()
                  .ifPresent(
                      best -> {
                        ObjectNode node = root.putObject("change_that_helps_most");
                        addChange(node, best, verdicts);
                        report
                            .pasted(best.remedy())
                            .ifPresent(
                                pasted ->
                                    node.put("block", pasted.packing())
                                        .put("journey_block", pasted.journey()));
                        report.cautionsOf(best.remedy()).forEach(node.putArray("cautions")::add);
                      });
              root.put("rough_margin_without_changes_K", tried.margin());
              ArrayNode all = root.putArray("changes_tried");
              tried.changes().forEach(each -> addChange(all.addObject(), each, verdicts));
            });
    ArrayNode packings = root.putArray("packings");
    rows.forEach(row -> addRow(packings.addObject(), row, verdicts));
    Cautions.of(report).forEach(root.putArray("cautions")::add);
    StatedAssumptions.sentences(scenario).forEach(root.putArray("assumptions")::add);
    return JsonText.of(root);
  }

  private static void addChange(
      ObjectNode node, ChangesTried.TriedChange change, VerdictWords verdicts) {
    node.put("words", verdicts.remedy(change.remedy()));
    node.put("rough_margin_K", change.margin());
    change
        .odds()
        .ifPresent(
            odds -> {
              node.put("level", Level.of(odds.within()).name());
              node.put("level_words", Level.of(odds.within()).words());
              JsonText.addOdds(node.putObject("odds"), odds.within());
              addCauses(node, odds);
            });
  }

  private static void addCauses(ObjectNode node, OddsByCause odds) {
    JsonText.addOdds(node.putObject("odds_not_too_cold"), odds.notTooCold());
    JsonText.addOdds(node.putObject("odds_not_too_hot"), odds.notTooHot());
    JsonText.addOdds(node.putObject("odds_enough_air"), odds.enoughAir());
    JsonText.addOdds(node.putObject("odds_not_burnt"), odds.notBurnt());
  }

  private static void addRow(ObjectNode node, Judged row, VerdictWords verdicts) {
    Assessment assessment = row.assessment();
    node.put("packing", row.parcel().name());
    node.put("warmer", row.hasWarmer());
    node.put("outer_volume_m3", row.parcel().outerVolume());
    node.put("mass_kg", row.parcel().mass());
    node.put("level", assessment.verdict().level().name());
    node.put("level_words", assessment.verdict().level().words());
    node.put("sentence", verdicts.sentence(assessment));
    node.put("engine", row.planned().engine());
    row.planned()
        .coefficientChange()
        .ifPresent(change -> node.put("coefficient_change_left", change));
    JsonText.addOdds(node.putObject("odds"), assessment.verdict().within());
    addCauses(node, assessment.odds().byCause());
    JsonText.addOdds(node.putObject("odds_ranges_half_as_wide_again"), assessment.wider().within());
    ArrayNode late = node.putArray("odds_by_hours_late");
    for (int hours = 0; hours <= assessment.odds().longestDelay(); hours++) {
      JsonText.addOdds(late.addObject(), assessment.odds().withinUntil(hours));
    }
    node.put("journeys", assessment.odds().journeys());
    node.put("tighter_side", assessment.verdict().side().words());
    node.put("tightest_s", assessment.verdict().tightest());
    for (Side side : Side.values()) {
      boolean cold = side == Side.COLD;
      ObjectNode margin = node.putObject(cold ? "cold_margin" : "hot_margin");
      addMargin(
          margin.putObject("nominal"),
          row.held(),
          assessment.nominalMargin(side),
          verdicts.words());
      margin.putObject("stress").put("margin_K", assessment.stress(side).kelvin());
      for (double share : QUANTILES) {
        margin.put(
            String.format(Locale.ROOT, "q%02.0f_K", 100 * share),
            cold ? assessment.odds().coldMargin(share) : assessment.odds().hotMargin(share));
      }
      assessment
          .odds()
          .typicallyBeyond(cold)
          .ifPresent(median -> margin.put("median_beyond_where_any_K", median));
      addShares(margin, assessment.odds(), cold);
    }
    ObjectNode outside = node.putObject("time_outside_until_opening");
    for (double share : QUANTILES) {
      outside.put(
          String.format(Locale.ROOT, "q%02.0f_s", 100 * share), assessment.odds().outside(share));
    }
    assessment
        .odds()
        .typicallyOutside()
        .ifPresent(median -> outside.put("median_where_any_s", median));
    ObjectNode error = node.putObject("error_K");
    error.put("total", assessment.error().total());
    error.put("grid", assessment.error().grid());
    error.put("grids_ordered", assessment.error().ordered());
    error.put("holding_coefficients", assessment.error().holding());
    error.put("reduction", assessment.error().reduction());
    error.put("condensation", assessment.error().condensation());
    if (assessment.error().melting() > 0) {
      error.put("melting", assessment.error().melting());
    }
    if (row.hasWarmer()) {
      error.put("warmer", assessment.error().warmer());
    }
    addAir(node.putObject("air_until_opening"), new Climate(row));
    addWarmers(node.putArray("warmers"), new Climate(row));
    ArrayNode animals = node.putArray("animals");
    row.parcel()
        .occupied()
        .forEach(cup -> addAnimal(animals.addObject(), row, cup, verdicts.words()));
    addLegDelays(node.putArray("delay_of_a_single_leg"), row);
    ArrayNode sensitivities = node.putArray("sensitivities");
    for (Sensitivity sensitivity : assessment.sensitivities()) {
      ObjectNode one = sensitivities.addObject();
      one.put("factor", sensitivity.factor().words());
      one.put("cold_margin_at_low_K", sensitivity.cold().atLow());
      one.put("cold_margin_at_high_K", sensitivity.cold().atHigh());
      one.put("hot_margin_at_low_K", sensitivity.hot().atLow());
      one.put("hot_margin_at_high_K", sensitivity.hot().atHigh());
    }
    ObjectNode heat = node.putObject("mean_heat_into_parcel_until_opening_W");
    for (Face face : Face.values()) {
      heat.put(face.words(), FaceHeat.mean(row, face));
    }
    addLedger(node.putObject("heat_until_opening_J"), row.planned().ledger());
    ArrayNode coefficients = node.putArray("coefficients_of_legs");
    for (LegCoefficients leg : row.planned().coefficients()) {
      ObjectNode one = coefficients.addObject();
      one.put("leg", row.held().legs().get(leg.leg()).name());
      ObjectNode surfaces = one.putObject("surfaces_W_per_m2_K");
      putNamed(surfaces, leg.surfaces());
      ObjectNode conductivities = one.putObject("conductivities_W_per_m_K");
      putNamed(conductivities, leg.conductivities());
    }
    node.put("cells", assessment.nominal().cells());
    ArrayNode cautions = node.putArray("cautions");
    assessment.verdict().cautions().forEach(cautions::add);
  }

  /** Extremes with everything as stated; fractions as at sea level. */
  private static void addAir(ObjectNode node, Climate climate) {
    addMoment(node.putObject("least_oxygen"), "fraction", climate.leastOxygen());
    addMoment(node.putObject("most_carbon_dioxide"), "fraction", climate.mostCarbonDioxide());
    addMoment(node.putObject("coldest_place_in_reach"), "temperature_K", climate.coldestPlace());
    addMoment(node.putObject("hottest_place_in_reach"), "temperature_K", climate.hottestPlace());
  }

  private static void addMoment(ObjectNode node, String quantity, Climate.Moment moment) {
    node.put(quantity, moment.value());
    node.put("time_s", moment.time());
    node.put("container", moment.cup().name());
  }

  private static void addWarmers(ArrayNode node, Climate climate) {
    for (Climate.WarmerCourse course : climate.warmers()) {
      ObjectNode one = node.addObject();
      one.put("warmer", course.warmer().name());
      one.put("peak_power_W", course.peak());
      one.put("at_least_half_of_it_s", course.useful());
      one.put("hottest_surface_K", course.hottest());
      course.mostly().ifPresent(limit -> one.put("mostly_limited_by", limit.name()));
      course.spent().ifPresent(time -> one.put("spent_s", time));
    }
  }

  private static void addShares(ObjectNode node, StudyResult odds, boolean cold) {
    odds.shares(cold)
        .ifPresent(
            apportioned -> {
              ArrayNode shares = node.putArray("shares_of_variance");
              for (Share share : apportioned.shares()) {
                ObjectNode one = shares.addObject();
                one.put("of", share.of());
                one.put("first_order", share.firstOrder());
                one.put("total", share.total());
              }
              node.put("unexplained", apportioned.unexplained());
            });
  }

  private static void addMargin(ObjectNode node, Journey journey, Margin margin, Words words) {
    node.put("margin_K", margin.kelvin());
    node.put("temperature_K", margin.temperature());
    node.put("time_s", margin.time());
    node.put("local_clock", clock(journey, margin.time(), words));
    node.put("container", margin.cup());
  }

  /** Without a date in the file the day counts from that of sealing: a date would be invented. */
  static String clock(Journey journey, double time, Words words) {
    LocalDateTime clock = journey.localClock(time);
    return words.dated()
        ? DATE_AND_CLOCK.format(clock)
        : Words.day(journey, clock) + " " + CLOCK.format(clock);
  }

  private static void addAnimal(ObjectNode node, Judged row, Container cup, Words words) {
    node.put("container", cup.name());
    node.put("animal", Judged.animal(cup).name());
    for (Side side : Side.values()) {
      addMargin(
          node.putObject(side == Side.COLD ? "nominal_cold_margin" : "nominal_hot_margin"),
          row.held(),
          Margin.of(row.assessment().nominal(), cup.name(), side, row.assessment().plannedEnd()),
          words);
    }
  }

  private static void addLegDelays(ArrayNode node, Judged row) {
    for (int leg = 0; leg < row.legDelays().size(); leg++) {
      ObjectNode one = node.addObject();
      one.put("leg", row.held().legs().get(leg).name());
      addDelay(one, row.legDelays().get(leg));
    }
  }

  private static void addLedger(ObjectNode node, HeatLedger ledger) {
    ObjectNode boundaries = node.putObject("in_through_boundaries");
    putNamed(boundaries, ledger.boundaries());
    ObjectNode sources = node.putObject("given_by_warmers");
    putNamed(sources, ledger.sources());
    ObjectNode stored = node.putObject("stored_in_blocks");
    putNamed(stored, ledger.storedIn());
    node.put("residual", ledger.residual());
  }

  /** Values by names in which faces are called as people call them. */
  private static void putNamed(ObjectNode node, Map<String, Double> values) {
    values.forEach((name, value) -> node.put(FaceNames.in(name), value));
  }

  private static void addDelay(ObjectNode node, DelayMargin delay) {
    node.put("kind", delay.isAtLeast() ? "at least" : "until");
    node.put("hold_s", delay.time());
  }

  static byte[] history(ComparisonReport report) {
    Words words = new Words(report.scenario());
    StringBuilder text =
        new StringBuilder(
            "packing,warmer,container,time_s,local_clock,ambient_K,animal_mean_K,animal_coldest_K,"
                + "animal_hottest_K,animal_q05_K,animal_q50_K,animal_q95_K,warmer_max_K,"
                + "packs_liquid_fraction,oxygen_mole_fraction,carbon_dioxide_mole_fraction,"
                + "relative_humidity,warmers_power_W,warmers_conversion\n");
    for (Judged row : report.rows()) {
      for (Container cup : row.parcel().occupied()) {
        addHistory(text, row, cup.name(), words);
      }
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static void addHistory(StringBuilder text, Judged row, String cup, Words words) {
    TransitResult nominal = row.assessment().nominal();
    double[] times = nominal.times();
    double[] mean = nominal.mean(cup);
    double[] coldest = nominal.coldest(cup);
    double[] hottest = nominal.hottest(cup);
    double[] low = row.odds().temperatures(cup, 0.05);
    double[] middle = row.odds().temperatures(cup, 0.5);
    double[] high = row.odds().temperatures(cup, 0.95);
    double[][] warmers =
        row.parcel().warmers().stream()
            .map(PlacedWarmer::name)
            .map(nominal::hottest)
            .toArray(double[][]::new);
    double[][] air = {
      nominal.oxygen(cup), nominal.carbonDioxide(cup), nominal.humidity(cup),
    };
    double[][] powers =
        row.parcel().warmers().stream()
            .map(PlacedWarmer::name)
            .map(nominal::power)
            .toArray(double[][]::new);
    double[][] conversions =
        row.parcel().warmers().stream()
            .map(PlacedWarmer::name)
            .map(nominal::conversion)
            .filter(conversion -> conversion.length > 0)
            .toArray(double[][]::new);
    List<PlacedPack> melting =
        row.parcel().packs().stream().filter(pack -> pack.pack().melts()).toList();
    double[][] fractions =
        melting.stream()
            .map(PlacedPack::name)
            .map(nominal::liquidFraction)
            .toArray(double[][]::new);
    double mass = melting.stream().mapToDouble(pack -> pack.pack().mass()).sum();
    Journey journey = row.held();
    for (int i = 0; i < times.length; i++) {
      text.append(CsvText.field(row.parcel().name())).append(row.hasWarmer() ? ",yes," : ",no,");
      text.append(CsvText.field(cup)).append(',').append(times[i]).append(',');
      text.append(clock(journey, times[i], words));
      double ambient = journey.ambientAt(times[i]);
      for (double value :
          new double[] {
            ambient, mean[i], coldest[i], hottest[i], low[i], middle[i], high[i],
          }) {
        text.append(',').append(value);
      }
      text.append(',');
      if (warmers.length > 0) {
        double most = Double.NEGATIVE_INFINITY;
        for (double[] warmer : warmers) {
          most = Math.max(most, warmer[i]);
        }
        text.append(most);
      }
      text.append(',');
      if (!melting.isEmpty()) {
        double liquid = 0;
        for (int pack = 0; pack < melting.size(); pack++) {
          liquid += fractions[pack][i] * melting.get(pack).pack().mass() / mass;
        }
        text.append(liquid);
      }
      for (double[] gas : air) {
        text.append(',').append(gas[i]);
      }
      text.append(',');
      if (warmers.length > 0) {
        text.append(sum(powers, i));
      }
      text.append(',');
      if (conversions.length > 0) {
        text.append(sum(conversions, i) / conversions.length);
      }
      text.append('\n');
    }
  }

  private static double sum(double[][] columns, int at) {
    double sum = 0;
    for (double[] column : columns) {
      sum += column[at];
    }
    return sum;
  }
}
