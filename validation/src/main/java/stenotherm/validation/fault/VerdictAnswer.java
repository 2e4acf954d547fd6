package stenotherm.validation.fault;

import static stenotherm.validation.fault.Agreement.same;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import stenotherm.ambient.FaceFilms;
import stenotherm.animal.Animals;
import stenotherm.base.Face;
import stenotherm.base.Mass;
import stenotherm.base.ProgressListener;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.TimeFunction;
import stenotherm.base.Times;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.conduction.IntegratorSettings.Scheme;
import stenotherm.decision.Assessment;
import stenotherm.decision.AssessmentSettings;
import stenotherm.decision.Assessor;
import stenotherm.decision.Level;
import stenotherm.decision.NumericalError;
import stenotherm.decision.Side;
import stenotherm.grid.Box;
import stenotherm.grid.MeshControl;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;
import stenotherm.journey.Place;
import stenotherm.material.Materials;
import stenotherm.parcel.Bedding;
import stenotherm.parcel.Container;
import stenotherm.parcel.Dimensions;
import stenotherm.parcel.Mounting;
import stenotherm.parcel.Occupant;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.Position;
import stenotherm.parcel.Vessel;
import stenotherm.parcel.WallLayer;
import stenotherm.parcel.Walls;
import stenotherm.study.JourneyStudy;
import stenotherm.study.Odds;
import stenotherm.study.StudyResult;
import stenotherm.study.StudySettings;
import stenotherm.transit.TransitSettings;
import stenotherm.warmer.PrescribedPower;
import stenotherm.warmer.WarmerClass;

/**
 * Answers about verdicts, on journeys so far from every limit, or so far beyond, that their odds
 * are none or all.
 *
 * <p>Internal. Thread-safe.
 */
enum VerdictAnswer implements KnownAnswer {
  /** A level goes by the lower end of the interval. */
  LEVEL_OF_ODDS {
    @Override
    public void check() {
      expect("level", Level.LIKELY, Level.of(new Odds(0.97, 0.9, 0.99)));
    }
  },

  /** All parts of the numerical error add up. */
  SUM_OF_ERRORS {
    @Override
    public void check() {
      same("error", 15, new NumericalError(1, true, 2, 4, 8).total(), 1e-12);
    }
  },

  /** The mean over an hour of a line is its value half an hour before. */
  RUNNING_MEAN_OF_LINE {
    @Override
    public void check() {
      double[] means =
          JourneyStudy.runningMeans(
              new double[] {0, 1200, 3000, 9000}, new double[] {300, 298, 295, 285}, 3600);
      same("since sealing", 297.5, means[2], 1e-12);
      same("over an hour", 288, means[3], 1e-12);
    }
  },

  /** A parcel in the cold: well at the planned opening, lost twelve hours later. */
  ODDS_OF_LATE_OPENING {
    @Override
    public void check() {
      StudyResult odds = cooling().odds();
      same("on time", 1, odds.withinUntil(0).within(), 1e-12);
      same("too late", 0, odds.withinUntil(12).within(), 1e-12);
    }
  },

  /** The error of a verdict's runs is among what its journeys differ in. */
  ERROR_AMONG_UNCERTAINTIES {
    @Override
    public void check() {
      boolean counted =
          cooling().odds().shares(true).stream()
              .flatMap(all -> all.shares().stream())
              .anyMatch(share -> share.of().equals("numerical error"));
      expect("numerical error among what is uncertain", true, counted);
    }
  },

  /** A parcel that is too hot all the time is not within its band, though never too cold. */
  ODDS_OF_BOTH_SIDES {
    @Override
    public void check() {
      StudyResult odds = hot().odds();
      same("not too cold", 1, odds.notTooCold().within(), 1e-12);
      same("within", 0, odds.within().within(), 1e-12);
      expect("side", Side.HOT, hot().verdict().side());
    }
  };

  private static final Source MADE_UP = Source.assumed("made up");

  private static <T> void expect(String what, T expected, T actual) {
    if (!expected.equals(actual)) {
      throw new IllegalStateException(what + ": " + actual + " instead of " + expected);
    }
  }

  /** What several answers are about is found once. */
  private static final Map<String, Assessment> FOUND = new ConcurrentHashMap<>();

  /** A quarter of an hour in air that is 25 K colder. */
  private static Assessment cooling() {
    return FOUND.computeIfAbsent("cooling", name -> assess(List.of(), 295, 270));
  }

  private static Assessment hot() {
    WarmerClass weak =
        new WarmerClass(
            "pad",
            new WarmerClass.PadSize(0.09, 0.06, 0.006),
            0.02,
            new PrescribedPower(TimeFunction.constant(0.1)),
            new Range(0.75, 1.25),
            MADE_UP);
    var pad = new PlacedWarmer("pad", weak, Face.Z_MAX, Mounting.taped(), 0);
    return FOUND.computeIfAbsent("hot", name -> assess(List.of(pad), 311, 311));
  }

  private static Assessment assess(List<PlacedWarmer> warmers, double start, double ambient) {
    Container cup =
        new Container(
            "cup",
            new Vessel.BoxCup(new Dimensions(0.08, 0.06, 0.05), new WallLayer(Materials.PET, 4e-4)),
            Position.MIDDLE_OF_FLOOR,
            Bedding.dampTowel(0.005),
            Occupant.of(Animals.LEOPARD_GECKO, Mass.grams(45)));
    Parcel parcel =
        new Parcel(
            "known",
            Box.ofSize(0.24, 0.20, 0.17),
            Walls.uniform(List.of(new WallLayer(Materials.EPS_20, 0.02))),
            Materials.SHREDDED_PAPER,
            List.of(cup),
            warmers);
    Leg room =
        new Leg(
            "room",
            new Place("here", ZoneOffset.UTC),
            Times.HOUR / 4,
            TimeFunction.constant(ambient),
            1,
            FaceFilms.indoors(),
            MADE_UP);
    TransitSettings few =
        new TransitSettings(
            MeshControl.uniform(0.06),
            Times.HOUR,
            IntegratorSettings.fixed(Scheme.TR_BDF2, Times.HOUR / 2));
    return Assessor.assess(
        parcel,
        new Journey(LocalDateTime.of(2026, 1, 5, 18, 0), start, List.of(room)),
        new AssessmentSettings(few, 12 * Times.HOUR, new StudySettings(16, 2, 1, 1)),
        ProgressListener.NONE);
  }
}
