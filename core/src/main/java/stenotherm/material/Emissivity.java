package stenotherm.material;

import java.util.List;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Radiation;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.Suggestions;

/**
 * How well a surface radiates at the temperatures of a parcel, and the catalogue of surfaces.
 *
 * <p>Radiation carries half or more of the heat across an unfilled gap, so these numbers matter
 * inside a parcel as much as outside. They are total hemispherical or near-normal values at room
 * temperature as tables print them; the two differ by less than the stated ranges.
 *
 * <p>A value, thus thread-safe.
 *
 * @param name name of the surface, unique in the catalogue
 * @param nominal emissivity, 0.01 to 1
 * @param range where real surfaces lie, holding {@code nominal}
 * @param source where both come from
 */
public record Emissivity(String name, double nominal, Range range, Source source) {
  private static final String INCROPERA =
      "Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, Table A.11";
  private static final String MANUALS = "Tables in manuals of infrared thermometers";
  private static final String COATINGS =
      "Table of surface coatings, html.scirp.org/file/88555_1.htm";

  /** Board and paper of any colour. */
  public static final Emissivity BOARD =
      new Emissivity(
          "board", 0.92, new Range(0.92, 0.97), Source.memory(INCROPERA, "paper 0.92 to 0.97"));

  /** Plastics: cups, film, plastic bottles. */
  public static final Emissivity PLASTIC =
      new Emissivity(
          "plastic", 0.9, new Range(0.85, 0.95), Source.read(MANUALS, "plastics 0.85 to 0.95"));

  /** Plastic tape on board. */
  public static final Emissivity TAPE =
      new Emissivity(
          "packing tape",
          0.9,
          new Range(0.85, 0.95),
          Source.assumed("like other plastics; the adhesive and the board below matter little"));

  /** Plastic foam. */
  public static final Emissivity FOAM =
      new Emissivity(
          "plastic foam",
          0.75,
          new Range(0.6, 0.9),
          Source.memory(
              "Tables in manuals of infrared thermometers; libraries of building materials",
              "foam 0.75 to 0.80 in manuals, EPS, XPS and PUR 0.8 in libraries (both read); lower"
                  + " end: polystyrene insulation 0.6 in other manuals (from memory); upper end:"
                  + " solid plastics"));

  /** Clean bright aluminium foil; dust, creases and a film of plastic on it raise the value. */
  public static final Emissivity ALUMINIUM_FOIL =
      new Emissivity(
          "aluminium foil",
          0.05,
          new Range(0.036, 0.07),
          Source.memory(
              INCROPERA, "foil 0.04 to 0.07; lower end of 0.036 read in another public table"));

  /** White paint. */
  public static final Emissivity WHITE_PAINT =
      new Emissivity(
          "white paint",
          0.92,
          new Range(0.85, 0.94),
          Source.read(COATINGS, "white enamel 0.853, epoxy 0.924, titanium oxide 0.94"));

  /** Black paint, dull or shiny. */
  public static final Emissivity BLACK_PAINT =
      new Emissivity(
          "black paint",
          0.95,
          new Range(0.87, 0.98),
          Source.read(
              MANUALS,
              "flat black paint and dull black lacquer 0.96 to 0.98, shiny black lacquer 0.87; "
                  + COATINGS
                  + ": 0.874"));

  /** Cloth, as of bags. */
  public static final Emissivity CLOTH =
      new Emissivity(
          "cloth",
          0.9,
          new Range(0.77, 0.98),
          Source.read(MANUALS, "textiles 0.90, cotton 0.77, black cloth 0.98"));

  /** Wood, planed. */
  public static final Emissivity WOOD =
      new Emissivity(
          "wood",
          0.9,
          new Range(0.85, 0.94),
          Source.memory(MANUALS, "oak 0.90 (read); range from memory"));

  /** Glass. */
  public static final Emissivity GLASS =
      new Emissivity("glass", 0.94, new Range(0.85, 1), Source.read(MANUALS, "glass 0.85 to 1"));

  /** Concrete, as of floors and steps. */
  public static final Emissivity CONCRETE =
      new Emissivity(
          "concrete", 0.94, new Range(0.92, 0.97), Source.read(MANUALS, "concrete 0.92 to 0.974"));

  /** Water, a wet towel, ice. */
  public static final Emissivity WET_SURFACE =
      new Emissivity(
          "wet surface",
          0.96,
          new Range(0.93, 0.98),
          Source.read(MANUALS, "distilled water and smooth ice 0.96, ice 0.96 to 0.98"));

  /** Skin of reptiles and amphibians. */
  public static final Emissivity ANIMAL_SKIN =
      new Emissivity(
          "animal skin",
          0.95,
          new Range(0.95, 0.965),
          Source.read(
              "Kearney and Porter, NicheMapR, defaults of the ectotherm model",
              "0.95; upper end: TrenchR, operative temperature of a lizard"));

  private static final List<Emissivity> ALL =
      List.of(
          BOARD,
          PLASTIC,
          TAPE,
          FOAM,
          ALUMINIUM_FOIL,
          WHITE_PAINT,
          BLACK_PAINT,
          CLOTH,
          WOOD,
          GLASS,
          CONCRETE,
          WET_SURFACE,
          ANIMAL_SKIN);

  /**
   * Checks the values.
   *
   * @throws InvalidInputException if one is not within 0.01 and 1, or the nominal value lies
   *     outside its own range
   */
  public Emissivity {
    Checks.name("name of a surface", name);
    Checks.given("range of " + name, range);
    Checks.given("source of " + name, source);
    Radiation.emissivity(range.low());
    Radiation.emissivity(range.high());
    Checks.within(
        "emissivity of " + name, nominal, range, "", "The value must lie in its own range.");
  }

  /**
   * Returns the whole catalogue.
   *
   * @return all surfaces; unmodifiable
   */
  public static List<Emissivity> all() {
    return ALL;
  }

  /**
   * Finds a surface by its name, without regard to case.
   *
   * @param name name of the surface, for example {@code "board"}
   * @return its emissivity
   * @throws InvalidInputException if there is none of that name; it offers the closest names
   */
  public static Emissivity named(String name) {
    return Suggestions.find("surface", name, ALL, Emissivity::name);
  }
}
