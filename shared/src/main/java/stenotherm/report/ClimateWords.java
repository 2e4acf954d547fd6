package stenotherm.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import stenotherm.air.BreathingLimits;
import stenotherm.animal.AnimalGroup;
import stenotherm.animal.Tolerance;
import stenotherm.base.Face;
import stenotherm.base.Temperatures;
import stenotherm.grid.Box;
import stenotherm.grid.Layout;
import stenotherm.parcel.Container;
import stenotherm.parcel.Openings;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.Vent;
import stenotherm.parcel.WallLayer;
import stenotherm.warmer.IronPowder;
import stenotherm.warmer.PrescribedPower;
import stenotherm.words.Figures;

/** The sentences about air and warmers, in the reader's units. */
record ClimateWords(Words words) {
  /** Something as cold hurts what touches it [K]. */
  private static final double FREEZING = Temperatures.fromCelsius(0);

  private static final BreathingLimits LIMITS = BreathingLimits.ECTOTHERMS;

  /** From this gain on little tips a cold warmer over. */
  private static final double NEAR_TIPPING = 0.8;

  /** As much as three holes of 6 mm; no more is little for a tight box [m2]. */
  private static final double FEW_HOLES = 8.5e-5;

  /** What lies closer together than this touches [m]. */
  private static final double TOUCHING = 1e-6;

  /** Oxygen in fresh air as sentences give it [-]. */
  static final double FRESH = 0.21;

  /** Thinner air than this, that of some 300 m, is worth a word [-]. */
  private static final double THIN = 0.965;

  /** A mole fraction in percent. */
  static String percent(double fraction) {
    return Figures.tenth(100 * fraction) + " %";
  }

  private static String whole(double fraction) {
    return Math.round(100 * fraction) + " %";
  }

  /** What each warmer gives, how hot it gets and what limits it. */
  Optional<String> warmers(Judged row) {
    List<Climate.WarmerCourse> courses = new Climate(row).warmers();
    if (courses.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        courses.stream()
            .map(course -> course(row, course, courses.size() > 1))
            .collect(Collectors.joining(" ")));
  }

  private String course(Judged row, Climate.WarmerCourse course, boolean several) {
    double until = row.assessment().plannedEnd();
    String name = several ? "'" + course.warmer().name() + "'" : "The warmer";
    if (course.peak() == 0) {
      return name + " gives no heat.";
    }
    return name
        + " gives at most "
        + Figures.power(course.peak())
        + ", and at least half of that during "
        + Words.hours(course.useful())
        + " of the "
        + Words.hours(until)
        + " h until opening; its hottest part has "
        + words.temperature(course.hottest())
        + "."
        + course
            .mostly()
            .map(most -> " What limits it most of the time is " + most.words() + ".")
            .orElse(" Its watts are those stated, whatever air it gets.")
        + course.spent().map(time -> " It is spent after " + Words.hours(time) + " h.").orElse("");
  }

  /** How little oxygen there is, and what places an animal can reach. */
  String air(Judged row) {
    Climate climate = new Climate(row);
    Climate.Moment oxygen = climate.leastOxygen();
    Climate.Moment dioxide = climate.mostCarbonDioxide();
    return "With everything as stated the air"
        + in(row, oxygen.cup())
        + " falls to "
        + percent(oxygen.value())
        + " oxygen ("
        + words.moment(row.held(), oxygen.time())
        + "; "
        + fresh(climate, oxygen)
        + ") and rises to "
        + percent(dioxide.value())
        + " carbon dioxide. Places in reach of an animal have "
        + words.temperature(climate.coldestPlace().value())
        + " to "
        + words.temperature(climate.hottestPlace().value())
        + ". The odds judge the animal on the floor, even one that climbs, and burns by the hottest"
        + " of these places.";
  }

  /** What to hold oxygen against. */
  private static String fresh(Climate climate, Climate.Moment moment) {
    double thinness = climate.thinness(moment);
    return "fresh air has 21 %"
        + (thinness < THIN ? ", in the thin air of that hour " + percent(FRESH * thinness) : "");
  }

  private static String in(Judged row, Container cup) {
    return row.parcel().occupied().size() > 1
        ? " in '" + cup.name() + "'"
        : " that the animal breathes";
  }

  /** The main reason if it is neither cold nor heat: when and how bad. */
  Optional<String> reason(Judged row) {
    double temperature =
        Math.max(1 - row.odds().notTooCold().within(), 1 - row.odds().notTooHot().within());
    double airless = 1 - row.odds().enoughAir().within();
    double burnt = 1 - row.odds().notBurnt().within();
    if (Math.max(airless, burnt) <= 0 || Math.max(airless, burnt) < temperature) {
      return Optional.empty();
    }
    Climate climate = new Climate(row);
    if (burnt > airless) {
      Climate.Moment hottest = climate.hottestPlace();
      return Optional.of(
          "It could burn itself in "
              + Words.inHundred(burnt)
              + " of 100: about "
              + words.moment(row.held(), hottest.time())
              + " a place in its reach typically has "
              + words.temperature(hottest.value())
              + ".");
    }
    Climate.Moment least = climate.leastOxygen();
    return Optional.of(
        "It is short of air in "
            + Words.inHundred(airless)
            + " of 100: about "
            + words.moment(row.held(), least.time())
            + whose(row, least.cup(), " its air", " the air in ")
            + " typically has "
            + percent(least.value())
            + " oxygen ("
            + fresh(climate, least)
            + ")"
            + cause(row, least.cup()));
  }

  /** Whose air: told where there are several animals. */
  private static String whose(Judged row, Container cup, String only, String several) {
    return row.parcel().occupied().size() > 1 ? several + "'" + cup.name() + "'" : only;
  }

  private static String cause(Judged row, Container cup) {
    if (cup.vessel().hasFewHoles()) {
      return ", as its lid has " + (cup.vessel().isTight() ? "no" : "few") + " holes.";
    }
    return row.hasWarmer() ? ", as the warmer uses it up." : ".";
  }

  /** What must be said of a packing's air and warmers. */
  List<String> cautions(Judged row) {
    List<String> all = new ArrayList<>();
    Climate climate = new Climate(row);
    if (isTight(row.parcel())) {
      all.add(
          "Its foam lets no air through, its seams are taped, and it has few holes or has them on"
              + " one face: all that is in it lives on what air is in it. Air passes best from holes"
              + " below to holes above.");
    }
    if (!row.parcel().packs().isEmpty() && climate.coldestPlace().value() < FREEZING) {
      all.add(
          "A place in reach of an animal gets as cold as "
              + words.temperature(climate.coldestPlace().value())
              + ", which the odds do not count: keep what is frozen away from containers.");
    }
    Climate.Moment oxygen = climate.leastOxygen();
    if (oxygen.value() < LIMITS.oxygenWarning()) {
      all.add(
          whose(row, oxygen.cup(), "Its air", "The air in ")
              + " has as little as "
              + percent(oxygen.value())
              + " oxygen "
              + when(row, oxygen)
              + " ("
              + fresh(climate, oxygen)
              + "): below "
              + whole(LIMITS.oxygenWarning())
              + " is little, below "
              + whole(LIMITS.oxygenAlarm())
              + " counts as harm (assumed).");
    }
    Climate.Moment dioxide = climate.mostCarbonDioxide();
    if (dioxide.value() > LIMITS.carbonDioxideWarning()) {
      all.add(
          whose(row, dioxide.cup(), "Its air", "The air in ")
              + " has "
              + percent(dioxide.value())
              + " carbon dioxide "
              + when(row, dioxide)
              + ": above "
              + whole(LIMITS.carbonDioxideWarning())
              + " is much, above "
              + whole(LIMITS.carbonDioxideAlarm())
              + " counts as harm (assumed).");
    }
    Climate.Moment hottest = climate.hottestPlace();
    if (hottest.value() > Tolerance.HOTTEST_TOUCH) {
      all.add(
          "Inside '"
              + hottest.cup().name()
              + "' it can reach a place of "
              + words.temperature(hottest.value())
              + " "
              + when(row, hottest)
              + ": what is above "
              + words.temperature(Tolerance.HOTTEST_TOUCH)
              + " burns a small animal (assumed).");
    }
    Climate.Moment dried = climate.mostDried();
    if (dried.value() >= AnimalGroup.DRYING) {
      all.add(drying(dried.cup(), dried.value()));
    }
    double until = row.assessment().plannedEnd();
    climate.warmers().forEach(course -> ofWarmer(row.parcel(), until, course, all));
    return all;
  }

  private static String drying(Container cup, double part) {
    return "The "
        + Judged.animal(cup).name()
        + " gives off "
        + whole(part)
        + " of its mass as water: amphibians that had lost 20 to 30 % moved far less (Greenberg and"
        + " Palen 2021). "
        + (cup.waterMass() > 0
            ? "What it takes up again from its wet bedding is not counted."
            : "Its bedding is dry: on wet moss it could take up water through its skin.");
  }

  private String when(Judged row, Climate.Moment moment) {
    return "about " + words.moment(row.held(), moment.time());
  }

  /** Adds what to know of a warmer in a packing that is opened some time after sealing [s]. */
  static void ofWarmer(Parcel parcel, double until, Climate.WarmerCourse course, List<String> all) {
    PlacedWarmer warmer = course.warmer();
    boolean several = parcel.warmers().size() > 1;
    String name = several ? "'" + warmer.name() + "'" : "The warmer";
    double open = warmer.cover().open();
    if (open <= 0.5 && !(warmer.warmer().heat() instanceof PrescribedPower)) {
      all.add(
          name
              + (open == 0
                  ? " is taped over: it gets no air and gives no heat."
                  : String.format(
                      Locale.ROOT,
                      " takes its air through %.0f %% of its film only (%s).",
                      100 * open,
                      warmer.cover().words())));
    }
    Layout layout = parcel.layout();
    Box pad = layout.block(warmer.name()).box();
    for (Container cup : parcel.occupied()) {
      if (pad.overlap(layout.block(cup.airBlock()).box()) > -TOUCHING) {
        all.add(name + " touches '" + cup.name() + "': keep a gap or a layer of fill between.");
      }
    }
    course
        .spent()
        .ifPresent(
            time ->
                all.add(
                    name
                        + " is spent after "
                        + Words.hours(time)
                        + " h, "
                        + Words.hours(until - time)
                        + " h before opening."));
    if (course.tipping() > NEAR_TIPPING) {
      all.add(
          name
              + " may tip over: a little more cold and it goes out, a little more warmth or air and it"
              + " runs away to a hotter state.");
    }
    if (course.mostly().equals(Optional.of(IronPowder.LimitedBy.OXYGEN))) {
      all.add(name + " lacks air most of the time: more holes give more heat.");
    }
  }

  /** No face breathes, no seam gapes, and holes are few or on one face, where no draught forms. */
  static boolean isTight(Parcel parcel) {
    Openings openings = parcel.openings();
    double holes = openings.vents().stream().mapToDouble(Vent::area).sum();
    long faces = openings.vents().stream().map(Vent::face).distinct().count();
    boolean breathes = false;
    for (Face face : Face.values()) {
      List<WallLayer> layers = parcel.walls().layersOf(face);
      breathes |= layers.stream().noneMatch(layer -> Openings.isTight(layer.material()));
    }
    return !breathes && openings.seamGap() == 0 && (holes < FEW_HOLES || faces < 2);
  }
}
