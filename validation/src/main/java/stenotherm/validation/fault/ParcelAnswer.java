package stenotherm.validation.fault;

import static stenotherm.validation.fault.Agreement.near;
import static stenotherm.validation.fault.Agreement.same;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import stenotherm.air.StandardAtmosphere;
import stenotherm.ambient.AirMovement;
import stenotherm.ambient.Ambient;
import stenotherm.ambient.DailyExtremes;
import stenotherm.ambient.DiurnalShape;
import stenotherm.ambient.FaceFilms;
import stenotherm.ambient.SolAir;
import stenotherm.ambient.SolarAbsorptance;
import stenotherm.ambient.Sunshine;
import stenotherm.ambient.Underside;
import stenotherm.animal.Exposure;
import stenotherm.animal.Limit;
import stenotherm.animal.TemperatureBand;
import stenotherm.animal.Tolerance;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.base.Orientation;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.TimeFunction;
import stenotherm.base.Times;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.conduction.IntegratorSettings.Scheme;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.MeshControl;
import stenotherm.journey.Contact;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;
import stenotherm.journey.Place;
import stenotherm.journey.Surroundings;
import stenotherm.material.Material;
import stenotherm.material.Materials;
import stenotherm.parcel.Container;
import stenotherm.parcel.Dimensions;
import stenotherm.parcel.Mounting;
import stenotherm.parcel.Openings;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.Position;
import stenotherm.parcel.Vessel;
import stenotherm.parcel.WallLayer;
import stenotherm.parcel.Walls;
import stenotherm.transit.Factor;
import stenotherm.transit.Transit;
import stenotherm.transit.TransitResult;
import stenotherm.transit.TransitSettings;
import stenotherm.transit.Variation;
import stenotherm.warmer.PrescribedPower;
import stenotherm.warmer.WarmerClass;

/**
 * Answers around the solver: what a parcel is made of, what it meets on its way, how its animal
 * fares. On a journey the parcel starts at the temperature that it must keep, so that coarse cells
 * and few steps have it exactly.
 *
 * <p>Internal. Thread-safe.
 */
enum ParcelAnswer implements KnownAnswer {
  /** Time, degree-time and first breach of a temperature that falls by 20 K and rises again. */
  EXPOSURE_ON_A_LINE {
    @Override
    public void check() {
      Exposure.Excursion cold = valley().alarm().cold();
      // below 286 K from 1400 s to 2600 s, by 6 K at most
      same("time below", 1200, cold.duration(), 1e-12);
      same("degree-time below", 1200 * 6 / 2, cold.degreeTime(), 1e-12);
      same("first breach", 1400, cold.firstBreach().orElse(Double.NaN), 1e-12);
    }
  },

  /** Margins to the limits of the coldest and the hottest part. */
  MARGINS_TO_LIMITS {
    @Override
    public void check() {
      same("cold margin, comfortable", -10, valley().coldMargin(Limit.COMFORTABLE), 1e-12);
      same("cold margin, alarm", -6, valley().coldMargin(Limit.ALARM), 1e-12);
      same("cold margin, critical", 5, valley().coldMargin(Limit.CRITICAL), 1e-12);
      same("hot margin, alarm", 4, valley().hotMargin(Limit.ALARM), 1e-12);
    }
  },

  /** Sol-air temperature: absorbed sun less what the sky takes, over the film. */
  RISE_BY_SUN_AND_SKY {
    @Override
    public void check() {
      same("rise", 30, SolAir.rise(600, 60, 18), 1e-12);
    }
  },

  /** Pressure of an air that cools by 6.5 K/km and carries its own weight. */
  PRESSURE_AT_ALTITUDE {
    @Override
    public void check() {
      // with the gas constant of the standard itself
      double exponent = 9.80665 * 0.0289644 / (8.31432 * 0.0065);
      double pressure = 101_325 * Math.pow(1 - 0.0065 * 5000 / 288.15, exponent);
      same("pressure at 5000 m", pressure, StandardAtmosphere.pressure(5000), 2e-6);
    }
  },

  /** Above a warm surface air rises, above a cold one it rests. */
  FILM_OF_UPPER_FACE {
    @Override
    public void check() {
      FaceFilms films = new FaceFilms(AirMovement.STILL, 0.5, new Underside.Open());
      double radiation = radiation(0.5, 290);
      same("above warm", 5.0 + radiation, films.coefficient(Face.Z_MAX, 300, 280), 1e-9);
      same("above cold", 0.7 + radiation, films.coefficient(Face.Z_MAX, 280, 300), 1e-9);
    }
  },

  /** Behind a ramp of s a first-order lag stays by s lag (1 - exp(-t / lag)). */
  LAG_BEHIND_RAMP {
    @Override
    public void check() {
      TimeFunction ramp = Ambient.series(new double[] {0, 20_000}, new double[] {280, 300});
      TimeFunction lagged = Ambient.following(ramp, new Range(0, 20_000), 3, 5000);
      double behind = 1e-3 * 5000 * (1 - Math.exp(-8000 / 5000.0));
      same("lagged", 280 + 8 + 3 - behind, lagged.at(8000), 1e-12);
    }
  },

  /** Each low and each high is met at its hour; each high falls to the low of the next day. */
  LOWS_AND_HIGHS {
    @Override
    public void check() {
      TimeFunction outdoors =
          new DailyExtremes(
              0, List.of(new Range(280, 295), new Range(270, 285)), DiurnalShape.SOLAR_TIME);
      same("first low", 280, outdoors.at(Times.fromHours(5)), 1e-12);
      same("first high", 295, outdoors.at(Times.fromHours(14.5)), 1e-12);
      // by the printed course half of a fall is done at 20 h
      same("halfway down", (295 + 270) / 2.0, outdoors.at(Times.fromHours(20)), 1e-12);
      same("second high", 285, outdoors.at(Times.fromHours(24 + 14.5)), 1e-12);
    }
  },

  /** The sum of density, specific heat and volume over all parts. */
  HEAT_CAPACITY_OF_PARCEL {
    @Override
    public void check() {
      Material air = Materials.STILL_AIR;
      double capacity =
          BOARD.volumetricHeatCapacity() * (OUTER - WITHIN_BOARD)
              + FOAM.volumetricHeatCapacity() * (WITHIN_BOARD - CAVITY)
              + PAPER.volumetricHeatCapacity() * (CAVITY - CUP - PAD)
              + air.volumetricHeatCapacity() * CUP
              + PAD_MASS * Materials.WARMER_MIX_FRESH.specificHeat();
      same("heat capacity", capacity, parcel().network(MESH).totalCapacity(), 1e-9);
    }
  },

  /** The sum of density and volume over all parts but air. */
  MASS_OF_PARCEL {
    @Override
    public void check() {
      double cupWall = 2 * (0.08 * 0.06 + 0.06 * 0.05 + 0.05 * 0.08) * 0.0004 * 1400;
      double mass =
          BOARD.density() * (OUTER - WITHIN_BOARD)
              + FOAM.density() * (WITHIN_BOARD - CAVITY)
              + PAPER.density() * (CAVITY - CUP - PAD)
              + cupWall
              + PAD_MASS;
      same("mass", mass, parcel().mass(), 1e-9);
    }
  },

  /** Walls at the high, fill at the low end of their conductivity. */
  CONDUCTIVITIES_AT_ENDS {
    @Override
    public void check() {
      Parcel varied = parcel().at(1, -1);
      same("foam", 0.04, solid(varied, "wall 2").material().conductivity(), 1e-12);
      same("fill", 0.045, solid(varied, "fill").material().conductivity(), 1e-12);
    }
  },

  /** A pad hangs 5 mm below the lid, its longer side along the longer one. */
  PLACE_OF_WARMER {
    @Override
    public void check() {
      Box pad = solid(parcel(), "pad").box();
      near("top", 0.20 - 0.04 - 0.005, pad.max().z(), 1e-12);
      near("height", 0.006, pad.size(Axis.Z), 1e-12);
      near("length", 0.09, pad.size(Axis.X), 1e-12);
      near("middle", 0.15, pad.centre().x(), 1e-12);
    }
  },

  /** A strong warmer gives the integral of its curve since opening, times its strength. */
  HEAT_OF_WARMER {
    @Override
    public void check() {
      TransitResult result =
          run(
              290,
              Variation.NOMINAL.with(Factor.WARMER_STRENGTH, 1),
              new Leg("room", HERE, 7200, constant(290), 0, FaceFilms.indoors(), MADE_UP));
      // opened at 1800 s: 1 h of warming up to 6 W, half an hour of 6 W
      double heat = 1.25 * (3 * 3600 + 6 * 1800);
      same("heat", heat, result.ledger().sources().getOrDefault("pad", Double.NaN), 1e-9);
    }
  },

  /**
   * On its side, the left face up and all others insulated, a parcel keeps the sol-air temperature
   * of the dark end of its absorptance.
   */
  SOL_AIR_OF_TURNED_PARCEL {
    @Override
    public void check() {
      double temperature = 320;
      double ambient = 300;
      double film = 4 + 4 * 1.5 + radiation(0.9, (temperature + ambient) / 2);
      double sun = (film * (temperature - ambient) + 0.9 * 63) / 0.7;
      List<Contact> insulated = new ArrayList<>();
      for (Face face : Face.values()) {
        if (face != Face.X_MIN) {
          insulated.add(Contact.whole(face, new Contact.Insulated()));
        }
      }
      Surroundings surroundings =
          Surroundings.of(
                  constant(ambient),
                  0,
                  new FaceFilms(new AirMovement.Moving(1.5), 0.9, new Underside.Open()))
              .lying(Orientation.X_MIN_UP)
              .under(
                  new Sunshine(
                      Map.of(Face.Z_MAX, constant(sun)),
                      new SolarAbsorptance(0.6, new Range(0.5, 0.7), MADE_UP),
                      63))
              .touching(insulated);
      TransitResult result =
          Transit.run(
              parcel().withoutWarmers(),
              new Journey(
                  SEALING, temperature, List.of(new Leg("sun", HERE, 7200, surroundings, MADE_UP))),
              Variation.NOMINAL.with(Factor.SOLAR_ABSORPTANCE, 1),
              SETTINGS);
      near("surface", temperature, last(result.surface(Face.X_MIN)), 1e-6);
    }
  },

  /** A parcel as warm as the air and its neighbour, with all that is uncertain about them. */
  UNCERTAIN_AMBIENT {
    @Override
    public void check() {
      TransitResult result = twoLegs();
      near("lid after the first leg", 287, result.surface(Face.Z_MAX)[1], 1e-6);
      near("right face after the first leg", 287, result.surface(Face.X_MAX)[1], 1e-6);
      near("lid after the second leg", 287, last(result.surface(Face.Z_MAX)), 1e-6);
    }
  },

  /** Each leg has the films of its own air. */
  FILMS_OF_EACH_LEG {
    @Override
    public void check() {
      TransitResult result = twoLegs();
      double radiation = radiation(0.9, 287);
      String side = Face.X_MIN.label();
      same(
          "still",
          2.5 + radiation,
          result.coefficients().get(0).surfaces().getOrDefault(side, Double.NaN),
          1e-8);
      same(
          "moving",
          12 + radiation,
          result.coefficients().get(1).surfaces().getOrDefault(side, Double.NaN),
          1e-8);
    }
  };

  private static final Source MADE_UP = Source.assumed("made up");
  private static final Place HERE = new Place("here", ZoneOffset.UTC);
  private static final LocalDateTime SEALING = LocalDateTime.of(2026, 1, 5, 18, 0);

  private static final Material BOARD = Material.of("board", 0.05, 200, 1500);
  private static final Material FOAM =
      new Material("foam", 0.03, new Range(0.02, 0.04), 20, 1400, MADE_UP);
  private static final Material PAPER =
      new Material("paper", 0.05, new Range(0.045, 0.07), 50, 1300, MADE_UP);
  private static final Material PLASTIC = Material.of("plastic", 0.2, 1400, 1200);

  /** Volumes [m3]. */
  private static final double OUTER = 0.30 * 0.24 * 0.20;

  private static final double WITHIN_BOARD = 0.28 * 0.22 * 0.18;
  private static final double CAVITY = 0.22 * 0.16 * 0.12;
  private static final double CUP = 0.08 * 0.06 * 0.05;
  private static final double PAD = 0.09 * 0.06 * 0.006;

  private static final double PAD_MASS = 0.02;

  private static final MeshControl MESH = MeshControl.uniform(0.06);

  /** Two values, few steps, no reduced model. */
  private static final TransitSettings SETTINGS =
      new TransitSettings(MESH, 3600, IntegratorSettings.fixed(Scheme.TR_BDF2, 1800)).full();

  private static TimeFunction constant(double value) {
    return TimeFunction.constant(value);
  }

  private static double last(double[] values) {
    return values[values.length - 1];
  }

  /** Radiative coefficient [W/(m2 K)]. */
  private static double radiation(double emissivity, double mean) {
    return emissivity * 4 * 5.670374419e-8 * mean * mean * mean;
  }

  private static Exposure valley() {
    Tolerance tolerance =
        new Tolerance(
            new TemperatureBand(new Range(290, 302), MADE_UP),
            new TemperatureBand(new Range(286, 305), MADE_UP),
            new TemperatureBand(new Range(275, 315), MADE_UP));
    return Exposure.of(
        tolerance,
        new double[] {0, 2000, 4000},
        new double[] {300, 280, 300},
        new double[] {301, 281, 301});
  }

  /** 10 mm of board around 30 mm of foam, paper, an empty cup and a pad below the lid; no seams. */
  private static Parcel parcel() {
    WarmerClass warmer =
        new WarmerClass(
            "pad",
            new WarmerClass.PadSize(0.09, 0.06, 0.006),
            PAD_MASS,
            new PrescribedPower(
                TimeFunction.table(new double[] {0, 3600, 36_000}, new double[] {0, 6, 6})),
            new Range(0.75, 1.25),
            MADE_UP);
    Vessel cup = new Vessel.BoxCup(new Dimensions(0.08, 0.06, 0.05), new WallLayer(PLASTIC, 4e-4));
    return new Parcel(
            "known",
            Box.ofSize(0.30, 0.24, 0.20),
            Walls.uniform(List.of(new WallLayer(BOARD, 0.01), new WallLayer(FOAM, 0.03))),
            PAPER,
            List.of(Container.empty("cup", cup, Position.MIDDLE_OF_FLOOR)),
            List.of(new PlacedWarmer("pad", warmer, Face.Z_MAX, Mounting.standingOff(0.005), 1800)))
        .withOpenings(new Openings(0, List.of()));
  }

  private static Block.Solid solid(Parcel parcel, String name) {
    return parcel.layout().blocks().stream()
        .filter(block -> block.name().equals(name))
        .findFirst()
        .flatMap(Block::asSolid)
        .orElseThrow(() -> new IllegalStateException("there is no '" + name + "'"));
  }

  private static TransitResult run(double start, Variation variation, Leg... legs) {
    return Transit.run(parcel(), new Journey(SEALING, start, List.of(legs)), variation, SETTINGS);
  }

  /** From 290 K less a spread of 3 K to 284 K less 1 K, but 4 K warmer than stated: 287 K. */
  private static TransitResult twoLegs() {
    FaceFilms still = new FaceFilms(AirMovement.STILL, 0.9, new Underside.Open());
    FaceFilms moving = new FaceFilms(new AirMovement.Moving(2), 0.9, new Underside.Open());
    Contact neighbour = Contact.whole(Face.X_MAX, new Contact.Neighbour(constant(290), 0.1));
    Surroundings room = Surroundings.of(constant(290), 3, still).touching(List.of(neighbour));
    Surroundings van = Surroundings.of(constant(284), 1, moving);
    return Transit.run(
        parcel().withoutWarmers(),
        new Journey(
            SEALING,
            287,
            List.of(
                new Leg("room", HERE, 3600, room, MADE_UP),
                new Leg("van", HERE, 3600, van, MADE_UP))),
        Variation.NOMINAL.with(Factor.AMBIENT, -1).withOffsetIn(1, 4),
        SETTINGS);
  }
}
