package stenotherm.material;

import java.util.List;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.Suggestions;
import stenotherm.base.Temperatures;

/**
 * The catalogue of materials: walls, foams, fills, cups and what is inside them.
 *
 * <p>Properties are those of dry material at room conditions unless a name says otherwise. The
 * conductivity of foams is that at a mean temperature of 10 °C by European or 24 °C by American
 * sources and follows a {@link TemperatureCorrection} from there; that of fills is taken at 20 °C
 * and follows a {@link FillLaw} that has the stated conductivity at 20 °C; the mean size of their
 * voids is an assumption. Packs melt ({@link Melting}). The conductivity of other materials is
 * constant. A run with frozen properties uses the stated conductivity. The provenance of a material
 * is that of its weakest property; the citation tells how each property was obtained. Where the
 * range of conductivity has equal ends, no spread is known.
 *
 * <p>Limits: the values are typical, not those of a certain product. Those of fills hold for heat
 * that flows sideways or down; heated from below, loose fill with large voids conducts more.
 * Alkanes with an odd number of carbon atoms change their solid structure just below the melting
 * point and are left out.
 *
 * <p>Stateless, thus thread-safe.
 */
public final class Materials {
  private static final String ASHRAE =
      "ASHRAE Handbook - Fundamentals, properties of building and insulating materials";
  private static final String EN_12524 =
      "EN 12524:2000 (now ISO 10456:2007), Table of design values";
  private static final String QUOTED = ", as quoted in a public table";
  private static final String INCROPERA =
      "Incropera and DeWitt, Fundamentals of Heat and Mass Transfer";
  private static final String EPS_STANDARD = "EN 13163, Annex F, mean curve of conductivity";
  private static final String VACUUM_PANELS =
      "Baetens et al. 2010, Energy and Buildings 42:147-172, and public descriptions";
  private static final String FUSION =
      "CRC Handbook of Chemistry and Physics, Enthalpy of fusion, as quoted in a public table";

  /** Densities that the curve of EN 13163 covers [kg/m3]. */
  private static final Range EPS_DENSITIES = new Range(8, 55);

  /** The 90 % fractile of EN 13163 lies above its mean curve by this [W/(m K)]. */
  private static final double EPS_FRACTILE = 0.027174 - 0.025314;

  /** Emissivity of paper and plant fibre, for the voids between scraps of them. */
  private static final double FIBRE_EMISSIVITY = 0.92;

  /** Emissivity of plastic foam, for the voids between pieces of it. */
  private static final double FOAM_EMISSIVITY = 0.8;

  // Air, water, ice.

  /** Air at 20 °C and 101.325 kPa that neither moves nor transmits radiation. */
  public static final Material STILL_AIR =
      exactly(
          "still air",
          new Trio(0.0257, 1.204, 1007),
          Source.memory(INCROPERA, "Table A.4, interpolated to 20 °C"));

  /** Still water at 10 °C; the upper end of the range is water at 40 °C. */
  public static final Material WATER =
      new Material(
          "water",
          0.60,
          new Range(0.60, 0.63),
          1000,
          4190,
          Source.read(EN_12524, "water at 10 °C and 40 °C, as quoted in a public table"));

  /** Ice at 0 °C; the upper end of the range is ice at -10 °C. */
  public static final Material ICE =
      new Material(
          "ice",
          2.2,
          new Range(2.2, 2.3),
          900,
          2000,
          Source.read(EN_12524, "ice at 0 °C and -10 °C, as quoted in a public table"));

  // Boards, papers, woods.

  /** Single-wall corrugated board, flutes and liners taken as one material. */
  public static final Material CORRUGATED_BOARD =
      new Material(
          "corrugated board",
          0.06,
          new Range(0.05, 0.12),
          135,
          1340,
          Source.memory(
              "Cekon, Struhala and Slavik 2017, J. Renewable Materials 5(S1):84-93",
              "range of conductivity over packaging boards (read); density derived from 450 to 600"
                  + " g/m2 over 3.6 to 4.2 mm; specific heat of paper from "
                  + INCROPERA
                  + ", Table A.3 (from memory)"));

  /** Laminated paperboard, solid. */
  public static final Material PAPERBOARD =
      exactly(
          "paperboard",
          new Trio(0.072, 480, 1380),
          Source.read(ASHRAE, "laminated paperboard, as quoted in a public table"));

  /** Paper, dry, as a solid sheet. */
  public static final Material PAPER =
      exactly("paper", new Trio(0.18, 930, 1340), Source.memory(INCROPERA, "Table A.3, paper"));

  /** Double-wall corrugated board, two layers of flutes. */
  public static final Material DOUBLE_WALL_BOARD =
      new Material(
          "double-wall corrugated board",
          0.06,
          new Range(0.05, 0.12),
          140,
          1340,
          Source.memory(
              "Cekon, Struhala and Slavik 2017, J. Renewable Materials 5(S1):84-93",
              "range of conductivity over packaging boards (read), taken for two layers of flutes"
                  + " alike; density of 800 to 1000 g/m2 over 6 to 7 mm and specific heat of"
                  + " paper from memory"));

  /** Wood fibreboard, soft. */
  public static final Material FIBREBOARD =
      exactly(
          "wood fibreboard",
          new Trio(0.07, 250, 1700),
          Source.read(EN_12524, "fibreboard of 250 kg/m3" + QUOTED));

  /** Plywood. */
  public static final Material PLYWOOD =
      exactly(
          "plywood",
          new Trio(0.13, 500, 1600),
          Source.read(EN_12524, "plywood of 500 kg/m3" + QUOTED));

  /** Softwood, across the grain. */
  public static final Material SOFTWOOD =
      exactly(
          "softwood",
          new Trio(0.13, 500, 1600),
          Source.read(EN_12524, "timber of 500 kg/m3" + QUOTED));

  /** Hardwood, across the grain. */
  public static final Material HARDWOOD =
      exactly(
          "hardwood",
          new Trio(0.18, 700, 1600),
          Source.read(EN_12524, "timber of 700 kg/m3" + QUOTED));

  /** Cork sheet. */
  public static final Material CORK =
      exactly(
          "cork",
          new Trio(0.05, 200, 1500),
          Source.read(EN_12524, "floor underlay, cork" + QUOTED));

  // Foams and other insulation.

  /** Expanded polystyrene of 12 kg/m3. */
  public static final Material EPS_12 = expandedPolystyrene(12);

  /** Expanded polystyrene of 15 kg/m3. */
  public static final Material EPS_15 = expandedPolystyrene(15);

  /** Expanded polystyrene of 20 kg/m3. */
  public static final Material EPS_20 = expandedPolystyrene(20);

  /** Expanded polystyrene of 25 kg/m3. */
  public static final Material EPS_25 = expandedPolystyrene(25);

  /** Expanded polystyrene of 30 kg/m3. */
  public static final Material EPS_30 = expandedPolystyrene(30);

  /** Expanded polystyrene with graphite in its cell walls. */
  public static final Material GRAPHITE_EPS =
      new Material(
              "graphite EPS",
              0.0315,
              new Range(0.031, 0.032),
              16,
              1450,
              Source.memory(
                  "Declared values of EPS with graphite under EN 13163",
                  "0.031 to 0.032 W/(m K) at 15 to 18 kg/m3"))
          .withBehaviour(new Behaviour.Corrected(TemperatureCorrection.EXPANDED_POLYSTYRENE));

  /**
   * Expanded polystyrene of unstated density, as of a box that is bought by the thickness of its
   * wall. Such boxes are often lighter than 20 kg/m3 and conduct a tenth more.
   */
  public static final Material EPS =
      new Material(
              "EPS",
              EPS_15.conductivity(),
              new Range(EPS_30.conductivity(), EPS_12.conductivityRange().high()),
              15,
              1450,
              Source.memory(
                  EPS_STANDARD,
                  "15 kg/m3, for which a public description of packaging states 0.038 W/(m K)"
                      + " (read); from the mean curve at 30 kg/m3 to the 90 % fractile at 12 kg/m3,"
                      + " as EPS has 11 to 32 kg/m3 (read)"))
          .withBehaviour(new Behaviour.Corrected(TemperatureCorrection.EXPANDED_POLYSTYRENE));

  /**
   * Extruded polystyrene. The lower end of the range is an old table's, the upper end aged board.
   */
  public static final Material XPS =
      new Material(
              "XPS",
              0.029,
              new Range(0.026, 0.036),
              32.5,
              1470,
              Source.memory(
                  ASHRAE,
                  "the example of an insulated wall, 5.28 m2 K/W for 150 mm, and 5 h ft2 °F/Btu per"
                      + " inch, both 0.029 W/(m K); lower end: 0.026 of an older table; upper end:"
                      + " 1/k of 27.7 of an older table (all read as quoted); European design values"
                      + " 0.029 to 0.034 from memory"))
          .withBehaviour(american(TemperatureCorrection.EXTRUDED_POLYSTYRENE));

  /** Polyisocyanurate foam, aged, without facings. */
  public static final Material PIR =
      new Material(
              "PIR",
              0.0235,
              new Range(0.022, 0.028),
              30,
              1470,
              Source.memory(
                  ASHRAE,
                  "polyisocyanurate, aged, unfaced, as quoted in a public table (read:"
                      + " conductivity, density); specific heat and range of declared values from"
                      + " memory"))
          .withBehaviour(american(TemperatureCorrection.POLYURETHANE));

  /** Polyisocyanurate foam between gas-tight facings, aged. */
  public static final Material PIR_FACED =
      new Material(
              "foil-faced PIR",
              0.022,
              new Range(0.019, 0.024),
              65,
              1470,
              Source.memory(
                  ASHRAE,
                  "lower end: polyisocyanurate, aged, with facers"
                      + QUOTED
                      + "; nominal: declared value of boards under EN 13165 with foil facings, 0.022"
                      + " at 10 °C (both read); upper end: the same at 24 °C (derived)"))
          .withBehaviour(american(TemperatureCorrection.POLYURETHANE));

  /** Rigid polyurethane foam without facings. */
  public static final Material PUR =
      new Material(
              "PUR",
              0.026,
              new Range(0.024, 0.030),
              40,
              1470,
              Source.memory(
                  ASHRAE,
                  "spray-applied polyurethane of 40 kg/m3"
                      + QUOTED
                      + " (read); range of declared values from memory"))
          .withBehaviour(american(TemperatureCorrection.POLYURETHANE));

  /** Polyethylene foam of the grade of sealants; packaging sheet is lighter. */
  public static final Material POLYETHYLENE_FOAM =
      exactly(
          "polyethylene foam",
          new Trio(0.05, 70, 2300),
          Source.read(EN_12524, "sealant, polyethylene foam" + QUOTED));

  /** Foam rubber. */
  public static final Material FOAM_RUBBER =
      exactly(
          "foam rubber", new Trio(0.06, 70, 1500), Source.read(EN_12524, "foam rubber" + QUOTED));

  /** Mineral wool, felted. */
  public static final Material MINERAL_WOOL =
      new Material(
              "mineral wool",
              0.04,
              new Range(0.035, 0.04),
              32,
              840,
              Source.read(ASHRAE, "mineral wool, felted, 32 kg/m3; lower end: 97.5 kg/m3" + QUOTED))
          .withBehaviour(american(TemperatureCorrection.MINERAL_WOOL));

  /** Wool felt. */
  public static final Material WOOL_FELT =
      exactly(
          "wool felt",
          new Trio(0.06, 200, 1300),
          Source.read(EN_12524, "floor underlay, wool" + QUOTED));

  /**
   * Vacuum panel with a core of fumed silica, new, away from its edges. Heat that the metallised
   * envelope conducts around the edge is not included.
   */
  public static final Material VACUUM_PANEL_CENTRE =
      new Material(
          "vacuum panel centre",
          0.004,
          new Range(0.004, 0.005),
          180,
          850,
          Source.memory(
              VACUUM_PANELS,
              "0.004 W/(m K) new in the centre (read); upper end, density and specific heat from"
                  + " memory"));

  /** Aged vacuum panel as a whole: an effective conductivity that includes its edges. */
  public static final Material VACUUM_PANEL =
      new Material(
          "vacuum panel",
          0.007,
          new Range(0.006, 0.008),
          180,
          850,
          Source.memory(
              VACUUM_PANELS,
              "0.006 to 0.008 W/(m K) with edge and ageing (read); density and specific heat from"
                  + " memory"));

  /** Vacuum panel that has lost its vacuum. */
  public static final Material VACUUM_PANEL_PUNCTURED =
      new Material(
          "punctured vacuum panel",
          0.020,
          new Range(0.018, 0.022),
          180,
          850,
          Source.memory(
              VACUUM_PANELS,
              "0.020 W/(m K) punctured (read); range, density and specific heat from memory"));

  // Loose fills; the law of the voids meets the stated conductivity at 20 °C.

  /** Shredded paper, packed by hand. */
  public static final Material SHREDDED_PAPER =
      new Material(
              "shredded paper",
              0.048,
              new Range(0.042, 0.055),
              45,
              1340,
              Source.assumed(
                  "No measurement of hand-packed shredded paper was found: estimated from loose"
                      + " cellulose"))
          .withBehaviour(Behaviour.Voids.meeting(0.048, 0.004, FIBRE_EMISSIVITY));

  /**
   * Crumpled newspaper, packed tight, with voids of 6 mm on average (4 to 8 mm assumed). Heated
   * from below, its large voids convect: 0.06 to 0.10 W/(m K) is then more likely.
   */
  public static final Material CRUMPLED_NEWSPAPER =
      new Material(
              "crumpled newspaper",
              0.055,
              new Range(0.045, 0.07),
              35,
              1340,
              Source.assumed(
                  "No measurement of crumpled newspaper was found: loose cellulose plus radiation"
                      + " and convection in its voids"))
          .withBehaviour(Behaviour.Voids.meeting(0.055, 0.006, FIBRE_EMISSIVITY));

  /** Newspaper crumpled loosely, with voids of 14 mm on average; its air convects readily. */
  public static final Material LOOSE_NEWSPAPER =
      new Material(
              "loosely crumpled newspaper",
              0.095,
              new Range(0.075, 0.115),
              20,
              1340,
              Source.assumed(
                  "No measurement was found: still air and radiation between surfaces of"
                      + " emissivity 0.92 across voids of 14 mm (10 to 18 mm) at 20 °C"))
          .withBehaviour(Behaviour.Voids.meeting(0.095, 0.014, FIBRE_EMISSIVITY));

  /** Loose cellulose fibre. The upper end of the range is a moist design value. */
  public static final Material LOOSE_CELLULOSE =
      new Material(
              "loose cellulose",
              0.042,
              new Range(0.042, 0.052),
              42.5,
              1380,
              Source.read(
                  ASHRAE,
                  "cellulose fibre, loose fill, as quoted in a public table; upper end: a design"
                      + " value for 50 kg/m3 read in another public table"))
          .withBehaviour(Behaviour.Voids.meeting(0.042, 0.001, FIBRE_EMISSIVITY));

  /** Wood wool (excelsior), loose. */
  public static final Material WOOD_WOOL =
      new Material(
              "wood wool",
              0.055,
              new Range(0.045, 0.07),
              50,
              1600,
              Source.assumed(
                  "No measurement of loose excelsior was found: like other loose plant fibre with"
                      + " voids of 5 mm; specific heat of wood"))
          .withBehaviour(Behaviour.Voids.meeting(0.055, 0.005, FIBRE_EMISSIVITY));

  /** Loose pieces of expanded polystyrene; the density is that of the bulk. */
  public static final Material LOOSE_FILL_EPS =
      new Material(
              "loose-fill EPS",
              0.05,
              new Range(0.045, 0.055),
              6,
              1300,
              Source.assumed(
                  "No measurement was found: bulk of 4 to 8 kg/m3 with convecting voids"))
          .withBehaviour(Behaviour.Voids.meeting(0.05, 0.006, FOAM_EMISSIVITY));

  /** Loose pieces of expanded starch; the density is that of the bulk. It dissolves when wet. */
  public static final Material LOOSE_FILL_STARCH =
      new Material(
              "loose-fill starch",
              0.055,
              new Range(0.05, 0.06),
              12,
              1500,
              Source.assumed(
                  "No measurement was found: bulk of 8 to 20 kg/m3 with voids like those of other"
                      + " loose pieces"))
          .withBehaviour(Behaviour.Voids.meeting(0.055, 0.006, FOAM_EMISSIVITY));

  /** Exfoliated vermiculite; the upper end of the range is a denser grade. */
  public static final Material VERMICULITE =
      new Material(
              "vermiculite",
              0.063,
              new Range(0.063, 0.068),
              80,
              1340,
              Source.read(
                  ASHRAE,
                  "vermiculite, exfoliated, 80 kg/m3; upper end and specific heat: 120 kg/m3"
                      + QUOTED))
          .withBehaviour(Behaviour.Voids.meeting(0.063, 0.002, FIBRE_EMISSIVITY));

  /** Expanded perlite; the upper end of the range is a denser grade. */
  public static final Material PERLITE =
      new Material(
              "perlite",
              0.042,
              new Range(0.042, 0.0485),
              50,
              1090,
              Source.read(ASHRAE, "perlite, expanded, 50 kg/m3; upper end: 100 kg/m3" + QUOTED))
          .withBehaviour(Behaviour.Voids.meeting(0.042, 0.001, FIBRE_EMISSIVITY));

  /** Coconut fibre, dry. */
  public static final Material COIR =
      new Material(
              "dry coir",
              0.05,
              new Range(0.045, 0.055),
              80,
              1500,
              Source.assumed(
                  "No measured value was readable: like other loose dry plant fibre, 50 to 120"
                      + " kg/m3"))
          .withBehaviour(Behaviour.Voids.meeting(0.05, 0.004, FIBRE_EMISSIVITY));

  /**
   * Sphagnum moss, dry and loose. Wet moss, see {@link #WET_SPHAGNUM}, holds 15 to 20 times its
   * mass of water.
   */
  public static final Material SPHAGNUM_DRY =
      new Material(
              "sphagnum, dry",
              0.045,
              new Range(0.04, 0.05),
              40,
              1700,
              Source.assumed("No measured value was readable: like other loose dry plant fibre"))
          .withBehaviour(Behaviour.Voids.meeting(0.045, 0.003, FIBRE_EMISSIVITY));

  /** Film with air bubbles, in layers. */
  public static final Material BUBBLE_FILM =
      new Material(
              "bubble film",
              0.045,
              new Range(0.035, 0.06),
              30,
              2000,
              Source.assumed(
                  "No measurement was found: still air and radiation across bubbles of 5 mm,"
                      + " little film"))
          .withBehaviour(Behaviour.Voids.meeting(0.045, 0.005, FOAM_EMISSIVITY));

  // Cups, bags, bottles, tape, foil.

  /** Polypropylene, as of cups and tape. */
  public static final Material POLYPROPYLENE =
      exactly(
          "polypropylene",
          new Trio(0.22, 910, 1800),
          Source.read(EN_12524, "polypropylene, as quoted in a public table"));

  /** Polystyrene, solid, as of clear cups. */
  public static final Material POLYSTYRENE =
      exactly(
          "polystyrene",
          new Trio(0.16, 1050, 1300),
          Source.read(EN_12524, "polystyrene, as quoted in a public table"));

  /** Polyethylene of low density. */
  public static final Material POLYETHYLENE_LOW_DENSITY =
      exactly(
          "polyethylene, low density",
          new Trio(0.33, 920, 2200),
          Source.read(EN_12524, "polyethylene, low density, as quoted in a public table"));

  /** Polyethylene of high density. */
  public static final Material POLYETHYLENE_HIGH_DENSITY =
      exactly(
          "polyethylene, high density",
          new Trio(0.50, 980, 1800),
          Source.read(EN_12524, "polyethylene, high density, as quoted in a public table"));

  /** Polyethylene terephthalate, as of clear cups. */
  public static final Material PET =
      new Material(
          "PET",
          0.20,
          new Range(0.15, 0.24),
          1370,
          1170,
          Source.memory("Handbooks of polymers", "polyethylene terephthalate"));

  /** Polyvinyl chloride, rigid. */
  public static final Material PVC =
      exactly(
          "PVC", new Trio(0.17, 1390, 900), Source.read(EN_12524, "polyvinylchloride" + QUOTED));

  /** Acrylic. */
  public static final Material ACRYLIC =
      exactly("acrylic", new Trio(0.2, 1050, 1500), Source.read(EN_12524, "acrylic" + QUOTED));

  /** Polycarbonate. */
  public static final Material POLYCARBONATE =
      exactly(
          "polycarbonate",
          new Trio(0.2, 1200, 1200),
          Source.read(EN_12524, "polycarbonates" + QUOTED));

  /** Soda-lime glass, as of vials. */
  public static final Material GLASS =
      exactly(
          "glass", new Trio(1.0, 2500, 750), Source.read(EN_12524, "glass, soda lime" + QUOTED));

  /** Packing tape: a film of polypropylene with adhesive, about 0.05 mm thick. */
  public static final Material PACKING_TAPE =
      exactly(
          "packing tape",
          new Trio(0.2, 920, 1800),
          Source.memory("Handbooks of polymers", "oriented polypropylene film"));

  /** Aluminium alloy, as of foil. */
  public static final Material ALUMINIUM =
      exactly(
          "aluminium",
          new Trio(160, 2800, 880),
          Source.read(EN_12524, "aluminium alloys" + QUOTED));

  /** Cotton cloth, as of bags for snakes; the lower end of the range is a loose weave. */
  public static final Material COTTON_CLOTH =
      new Material(
          "cotton cloth",
          0.07,
          new Range(0.05, 0.073),
          300,
          1300,
          Source.memory(
              "Tables of the conductivity of textiles",
              "cotton 0.071 to 0.073 W/(m K) (read in a public table of the trade); lower end,"
                  + " bulk density and specific heat from memory"));

  // Bedding and soil.

  /** Paper towel, a dry pad of several sheets. */
  public static final Material DRY_PAPER_TOWEL =
      new Material(
          "dry paper towel",
          0.045,
          new Range(0.035, 0.06),
          60,
          1340,
          Source.assumed(
              "No measurement of the conductivity was found: like loose paper; density of a pad"
                  + " of sheets of 39 to 56 g/m2, which are read values"));

  /**
   * Paper towel with 3 g of water to each gram of dry paper. Evaporation, which takes more heat
   * from it than conduction, is not part of a material.
   */
  public static final Material DAMP_PAPER_TOWEL =
      new Material(
          "damp paper towel",
          0.087,
          new Range(0.05, 0.15),
          240,
          3478,
          Source.assumed(
              "Mixing bounds for paper, water and air at 60 kg/m3 of dry paper: geometric mean as"
                  + " lower, parallel as upper bound, the value being the geometric mean of the"
                  + " two; density and specific heat by mass"));

  /** Paper towel with 10 g of water to each gram of dry paper, close to all that it holds. */
  public static final Material WET_PAPER_TOWEL =
      new Absorbent(DRY_PAPER_TOWEL, PAPER).with("wet paper towel", 10);

  /** Sphagnum moss with 5 g of water to each gram of dry moss: moist to the touch. */
  public static final Material DAMP_SPHAGNUM =
      new Absorbent(SPHAGNUM_DRY, PAPER).with("damp sphagnum", 5);

  /**
   * Sphagnum moss with 15 g of water to each gram of dry moss, about all that it holds. Pressed
   * together it conducts more, about 0.5 W/(m K).
   */
  public static final Material WET_SPHAGNUM =
      new Absorbent(SPHAGNUM_DRY, PAPER).with("wet sphagnum", 15);

  /** Coconut fibre with 3 g of water to each gram of dry fibre. */
  public static final Material DAMP_COIR = new Absorbent(COIR, PAPER).with("damp coir", 3);

  /** Potting soil with peat or bark, damp. */
  public static final Material POTTING_SOIL =
      new Material(
          "damp potting soil",
          0.5,
          new Range(0.25, 1.0),
          900,
          1900,
          Source.assumed(
              "Loose organic soil with about a third of water by volume; conductivity between dry"
                  + " peat and wet mineral soil"));

  /** Sand and gravel. */
  public static final Material SAND =
      exactly(
          "sand and gravel",
          new Trio(2.0, 1950, 1045),
          Source.read(EN_12524, "sand and gravel" + QUOTED));

  /** Sand, dry. */
  public static final Material DRY_SAND =
      new Material(
          "dry sand",
          0.3,
          new Range(0.2, 0.4),
          1550,
          800,
          Source.memory(
              INCROPERA,
              "Table A.3, sand; conductivity 0.27 W/(m K) at 27 °C, density 1515 kg/m3, rounded"));

  /** Clay or silt. */
  public static final Material CLAY =
      exactly("clay", new Trio(1.5, 1500, 2085), Source.read(EN_12524, "clay or silt" + QUOTED));

  // Bodies.

  /** Tissue of a small ectotherm, blood flow left out. */
  public static final Material ANIMAL_TISSUE =
      new Material(
          "animal tissue",
          0.5,
          new Range(0.41, 0.60),
          1000,
          3400,
          Source.memory(
              "Kearney and Porter, NicheMapR, defaults of the ectotherm model",
              "conductivity, its lower end and density (read; upper end held at that of water);"
                  + " specific heat of lean tissue from memory, the model's own default is 3073"
                  + " J/(kg K)"));

  /** Fresh mix of iron powder, carbon, water, vermiculite and salt, in bulk. */
  public static final Material WARMER_MIX_FRESH =
      new Material(
          "warmer mix, fresh",
          0.45,
          new Range(0.3, 0.6),
          1300,
          1360,
          Source.assumed(
              "Specific heat from parts by mass (half iron, 22 % water); conductivity and bulk"
                  + " density are estimates"));

  /** Spent mix of a warmer, oxidised and hard. */
  public static final Material WARMER_MIX_SPENT =
      new Material(
          "warmer mix, spent",
          0.3,
          new Range(0.2, 0.4),
          1300,
          1000,
          Source.assumed("Estimate: oxides with little water left"));

  // Packs that melt. Their density is that of the liquid, with which they are filled.

  /** Pack of plain water; the stated properties are those of ice. */
  public static final Material ICE_PACK =
      new Material(
              "ice pack",
              2.2,
              new Range(2.2, 2.3),
              1000,
              2000,
              Source.read(
                  EN_12524,
                  "ice and water"
                      + QUOTED
                      + "; latent heat of 333.6 kJ/kg from 6.01 kJ/mol: "
                      + FUSION))
          .withBehaviour(melting(new Range(0, 0), 333.6e3, new Liquid(0.6, 4190)));

  /** Cold pack of water with a thickener. */
  public static final Material GEL_PACK =
      new Material(
              "gel pack",
              2.0,
              new Range(1.8, 2.2),
              1015,
              2000,
              Source.memory(
                  "Handbooks of cold storage",
                  "water gels: melting at -1 °C to 0 °C with 300 to 330 kJ/kg"))
          .withBehaviour(melting(new Range(-1, 0), 315e3, new Liquid(0.55, 4100)));

  /** Tetradecane, a paraffin that melts at 5.9 °C. */
  public static final Material TETRADECANE =
      new Material(
              "n-tetradecane",
              0.3,
              new Range(0.2, 0.35),
              765,
              1900,
              alkane("45.07 kJ/mol at 279.05 K"))
          .withBehaviour(melting(new Range(5.9, 5.9), 227e3, new Liquid(0.15, 2200)));

  /** Hexadecane, a paraffin that melts at 18 °C. */
  public static final Material HEXADECANE =
      new Material(
              "n-hexadecane",
              0.3,
              new Range(0.2, 0.35),
              774,
              1900,
              alkane("53.36 kJ/mol at 291.15 K"))
          .withBehaviour(melting(new Range(18, 18), 236e3, new Liquid(0.15, 2200)));

  /** Octadecane, a paraffin that melts at 28 °C. */
  public static final Material OCTADECANE =
      new Material(
              "n-octadecane",
              0.3,
              new Range(0.2, 0.35),
              777,
              1900,
              alkane("61.70 kJ/mol at 301.15 K"))
          .withBehaviour(melting(new Range(28, 28), 242e3, new Liquid(0.15, 2200)));

  /** Eicosane, a paraffin that melts at 36.5 °C. */
  public static final Material EICOSANE =
      new Material(
              "n-eicosane",
              0.3,
              new Range(0.2, 0.35),
              785,
              1900,
              alkane("69.9 kJ/mol; melting point 36.5 °C from memory"))
          .withBehaviour(melting(new Range(36.5, 36.5), 247e3, new Liquid(0.15, 2200)));

  /**
   * Calcium chloride hexahydrate, a salt that melts at 29 °C to 30 °C. Real packs supercool and
   * segregate unless additives prevent it; the model includes neither.
   */
  public static final Material CALCIUM_CHLORIDE_HEXAHYDRATE =
      new Material(
              "calcium chloride hexahydrate",
              1.09,
              new Range(1.0, 1.1),
              1560,
              1400,
              Source.memory(
                  "Zalba et al. 2003, Applied Thermal Engineering 23:251-283",
                  "calcium chloride hexahydrate: 170 to 190 kJ/kg; conductivity 0.54 liquid, 1.09"
                      + " W/(m K) solid; range assumed"))
          .withBehaviour(melting(new Range(29, 30), 180e3, new Liquid(0.54, 2200)));

  private static final List<Material> ALL =
      List.of(
          STILL_AIR,
          WATER,
          ICE,
          CORRUGATED_BOARD,
          PAPERBOARD,
          PAPER,
          DOUBLE_WALL_BOARD,
          FIBREBOARD,
          PLYWOOD,
          SOFTWOOD,
          HARDWOOD,
          CORK,
          EPS,
          EPS_12,
          EPS_15,
          EPS_20,
          EPS_25,
          EPS_30,
          GRAPHITE_EPS,
          XPS,
          PIR,
          PIR_FACED,
          PUR,
          POLYETHYLENE_FOAM,
          FOAM_RUBBER,
          MINERAL_WOOL,
          WOOL_FELT,
          VACUUM_PANEL_CENTRE,
          VACUUM_PANEL,
          VACUUM_PANEL_PUNCTURED,
          SHREDDED_PAPER,
          CRUMPLED_NEWSPAPER,
          LOOSE_NEWSPAPER,
          LOOSE_CELLULOSE,
          WOOD_WOOL,
          LOOSE_FILL_EPS,
          LOOSE_FILL_STARCH,
          VERMICULITE,
          PERLITE,
          COIR,
          SPHAGNUM_DRY,
          BUBBLE_FILM,
          POLYPROPYLENE,
          POLYSTYRENE,
          POLYETHYLENE_LOW_DENSITY,
          POLYETHYLENE_HIGH_DENSITY,
          PET,
          PVC,
          ACRYLIC,
          POLYCARBONATE,
          GLASS,
          PACKING_TAPE,
          ALUMINIUM,
          COTTON_CLOTH,
          DRY_PAPER_TOWEL,
          DAMP_PAPER_TOWEL,
          WET_PAPER_TOWEL,
          DAMP_SPHAGNUM,
          WET_SPHAGNUM,
          DAMP_COIR,
          POTTING_SOIL,
          SAND,
          DRY_SAND,
          CLAY,
          ANIMAL_TISSUE,
          WARMER_MIX_FRESH,
          WARMER_MIX_SPENT,
          ICE_PACK,
          GEL_PACK,
          TETRADECANE,
          HEXADECANE,
          OCTADECANE,
          EICOSANE,
          CALCIUM_CHLORIDE_HEXAHYDRATE);

  /** Other words that users write: a piece of the word, and the names that it stands for. */
  private static final List<Suggestions.OtherWord> OTHER_WORDS =
      List.of(
          word("bead foam", "EPS 20", "EPS 15"),
          word("styro", "EPS 20", "EPS 15", "XPS"),
          word("beadboard", "EPS 15", "EPS 20"),
          word("polyurethane", "PUR", "PIR"),
          word("cardboard", "corrugated board", "double-wall corrugated board"),
          word("peanut", "loose-fill EPS", "loose-fill starch"),
          word("excelsior", "wood wool"),
          word("moss", "damp sphagnum", "wet sphagnum", "sphagnum, dry"),
          word("coco", "dry coir", "damp coir"),
          word("foil", "aluminium", "foil-faced PIR"),
          word("vip", "vacuum panel"),
          word("cold pack", "gel pack", "ice pack"));

  private Materials() {}

  private static Suggestions.OtherWord word(String piece, String... names) {
    return new Suggestions.OtherWord(piece, List.of(names));
  }

  /**
   * Returns the whole catalogue.
   *
   * @return all materials, grouped by use; unmodifiable
   */
  public static List<Material> all() {
    return ALL;
  }

  /**
   * Finds a material by its name, without regard to case.
   *
   * @param name name of the material, for example {@code "EPS 20"}
   * @return the material
   * @throws InvalidInputException if there is none of that name; it offers the closest names
   */
  public static Material named(String name) {
    return Suggestions.find("material", name, ALL, Material::name, OTHER_WORDS);
  }

  /**
   * Expanded polystyrene (moulded beads) by its density, at a mean temperature of 10 °C: k =
   * 0.025314 + 5.1743e-5 rho + 0.173606 / rho. The upper end of the range is the standard's 90 %
   * fractile; the lower end is as far below the mean. The number in the name is the density, not
   * the compressive-strength class of building products.
   *
   * @param density density [kg/m3], 8 to 55
   * @return the material, named {@code "EPS "} and the density
   * @throws InvalidInputException if the density is out of its range
   */
  public static Material expandedPolystyrene(double density) {
    Checks.within(
        "density of EPS",
        density,
        EPS_DENSITIES,
        "kg/m3",
        "The curve of EN 13163 is meant for these densities; boxes have 12 to 30 kg/m3.");
    double conductivity = 0.025314 + 5.1743e-5 * density + 0.173606 / density;
    return new Material(
        "EPS " + Checks.show(density, ""),
        conductivity,
        new Range(conductivity - EPS_FRACTILE, conductivity + EPS_FRACTILE),
        density,
        1450,
        Source.memory(EPS_STANDARD, "specific heat: ISO 10456, Table 4"),
        new Behaviour.Corrected(TemperatureCorrection.EXPANDED_POLYSTYRENE));
  }

  private static Material exactly(String name, Trio properties, Source source) {
    double conductivity = properties.conductivity;
    return new Material(
        name,
        conductivity,
        new Range(conductivity, conductivity),
        properties.density,
        properties.specificHeat,
        source);
  }

  /** A foam or wool whose conductivity an American table states. */
  private static Behaviour american(TemperatureCorrection correction) {
    return new Behaviour.Corrected(correction.from(TemperatureCorrection.AMERICAN_REFERENCE));
  }

  private static Source alkane(String fusion) {
    return Source.memory(
        FUSION,
        "latent heat (read) from "
            + fusion
            + "; conductivity 0.15 liquid, 0.2 to 0.35 W/(m K) solid, density and specific heats"
            + " from memory");
  }

  private static Behaviour melting(Range celsius, double latentHeat, Liquid liquid) {
    Range range =
        new Range(
            Temperatures.fromCelsius(celsius.low()), Temperatures.fromCelsius(celsius.high()));
    return new Behaviour.Melts(
        new Melting(range, latentHeat, liquid.conductivity, liquid.specificHeat));
  }

  /** What melting changes. */
  private record Liquid(double conductivity, double specificHeat) {}

  /** The three numbers of a material, in the order in which tables print them. */
  private record Trio(double conductivity, double density, double specificHeat) {}
}
