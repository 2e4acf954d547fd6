package stenotherm.material;

import java.util.List;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.Suggestions;

/**
 * The catalogue of materials: walls, foams, fills, cups and what is inside them.
 *
 * <p>Properties are those of dry material at room conditions unless a name says otherwise; foams at
 * a mean temperature of 10 °C, where {@link TemperatureCorrection} starts from, other materials at
 * 10 °C to 24 °C. The provenance of a material is that of its weakest property; the citation says
 * which property came how. Where the range of conductivity has equal ends, no spread is known.
 *
 * <p>Limits: the values are for orientation, not a measurement of anybody's product. Fills are
 * meant horizontally or heated from above; loose fill with large voids that is heated from below
 * lets more heat through.
 *
 * <p>Stable. Stateless, thus thread-safe.
 */
public final class Materials {
  private static final String ASHRAE =
      "ASHRAE Handbook - Fundamentals, properties of building and insulating materials";
  private static final String EN_12524 =
      "EN 12524:2000 (now ISO 10456:2007), Table of design values";
  private static final String INCROPERA =
      "Incropera and DeWitt, Fundamentals of Heat and Mass Transfer";
  private static final String EPS_STANDARD = "EN 13163, Annex F, mean curve of conductivity";

  /** Densities for which the curve of EN 13163 is meant [kg/m3]. */
  private static final Range EPS_DENSITIES = new Range(8, 55);

  /** The 90 % fractile of EN 13163 lies above its mean curve by this [W/(m K)]. */
  private static final double EPS_FRACTILE = 0.027174 - 0.025314;

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

  /** Expanded polystyrene of 15 kg/m3. */
  public static final Material EPS_15 = expandedPolystyrene(15);

  /** Expanded polystyrene of 20 kg/m3. */
  public static final Material EPS_20 = expandedPolystyrene(20);

  /** Expanded polystyrene of 30 kg/m3. */
  public static final Material EPS_30 = expandedPolystyrene(30);

  /** Extruded polystyrene; the upper end of the range is aged board. */
  public static final Material XPS =
      new Material(
          "XPS",
          0.026,
          new Range(0.026, 0.034),
          32.5,
          1470,
          Source.memory(
              ASHRAE,
              "extruded polystyrene, as quoted in a public table (read); aged design values of"
                  + " 0.029 to 0.034 W/(m K) from memory"));

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
              "polyisocyanurate, aged, unfaced, as quoted in a public table (read: conductivity,"
                  + " density); specific heat and range of declared values from memory"));

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
                  + " cellulose"));

  /**
   * Crumpled newspaper. Heated from below its large voids convect: 0.06 to 0.10 W/(m K) is then
   * likelier.
   */
  public static final Material CRUMPLED_NEWSPAPER =
      new Material(
          "crumpled newspaper",
          0.055,
          new Range(0.045, 0.07),
          35,
          1340,
          Source.assumed(
              "No measurement of crumpled newspaper was found: loose cellulose plus radiation and"
                  + " convection in voids of 20 to 50 mm"));

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
              "cellulose fibre, loose fill, as quoted in a public table; upper end: a design value"
                  + " for 50 kg/m3 read in another public table"));

  /** Loose pieces of expanded polystyrene; the density is that of the bulk. */
  public static final Material LOOSE_FILL_EPS =
      new Material(
          "loose-fill EPS",
          0.05,
          new Range(0.045, 0.055),
          6,
          1300,
          Source.assumed("No measurement was found: bulk of 4 to 8 kg/m3 with convecting voids"));

  /** Sphagnum moss, dry and loose. Wet moss holds 15 to 20 times its mass and is another thing. */
  public static final Material SPHAGNUM_DRY =
      new Material(
          "sphagnum, dry",
          0.045,
          new Range(0.04, 0.05),
          40,
          1700,
          Source.assumed("No measured value was readable: like other loose dry plant fibre"));

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

  /**
   * Paper towel with 3 g of water to each gram of dry paper. Evaporation takes more heat from it
   * than conduction; that is not part of a material.
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

  /** Water at 10 °C; the upper end of the range is water at 40 °C. Without motion. */
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

  /** Air at 20 °C and 101.325 kPa that neither moves nor lets radiation through. */
  public static final Material STILL_AIR =
      exactly(
          "still air",
          new Trio(0.0257, 1.204, 1007),
          Source.memory(INCROPERA, "Table A.4, interpolated to 20 °C"));

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

  /** Fresh mix of iron powder, carbon, water, vermiculite and salt, as a bulk. */
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

  private static final List<Material> ALL =
      List.of(
          CORRUGATED_BOARD,
          PAPERBOARD,
          PAPER,
          EPS_15,
          EPS_20,
          EPS_30,
          XPS,
          PIR,
          SHREDDED_PAPER,
          CRUMPLED_NEWSPAPER,
          LOOSE_CELLULOSE,
          LOOSE_FILL_EPS,
          SPHAGNUM_DRY,
          POLYPROPYLENE,
          POLYSTYRENE,
          POLYETHYLENE_LOW_DENSITY,
          POLYETHYLENE_HIGH_DENSITY,
          PET,
          DAMP_PAPER_TOWEL,
          WATER,
          ICE,
          STILL_AIR,
          ANIMAL_TISSUE,
          WARMER_MIX_FRESH);

  private Materials() {}

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
   * @throws InvalidInputException if there is none of that name; it offers the closest name
   */
  public static Material named(String name) {
    return Suggestions.find("material", name, ALL, Material::name);
  }

  /**
   * Expanded polystyrene (moulded beads) by its density, at a mean temperature of 10 °C: k =
   * 0.025314 + 5.1743e-5 rho + 0.173606 / rho. The upper end of the range is the standard's 90 %
   * fractile, the lower end mirrors it. The number in the name is the density, not the
   * compressive-strength class that building products carry.
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
        Source.memory(EPS_STANDARD, "specific heat: ISO 10456, Table 4"));
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

  /** The three numbers of a material, in the order in which tables print them. */
  private record Trio(double conductivity, double density, double specificHeat) {}
}
