package stenotherm.transit;

import stenotherm.air.FoamPanel;
import stenotherm.ambient.Stowage;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.journey.Journey;
import stenotherm.parcel.Openings;
import stenotherm.parcel.Parcel;
import stenotherm.warmer.IronPowder;
import stenotherm.warmer.PowderKinetics;

/**
 * The uncertain quantities of a transit.
 *
 * <p>Experimental. Thread-safe.
 */
public enum Factor {
  /** Conductivity of all wall layers, over the range that each material states. */
  WALL_CONDUCTIVITY("insulation of the walls"),
  /** Conductivity of the fill, over the range that it states. */
  FILL_CONDUCTIVITY("insulation of the fill"),
  /** All surface coefficients, times {@link #FILM_FACTORS}. */
  SURFACE_FILM("heat exchange with the air outside"),
  /** Power of all warmers, times the strength that each states. */
  WARMER_STRENGTH("warmer strength"),
  /**
   * Power, film and iron of all warmers, times the factor that each states for want of the bench's
   * resistances: a bench that conducts more stands for all three in proportion at the same
   * temperatures, so that none of its ratings is fitted anew.
   */
  RATING_BENCH("watts that a warmer's rating stands for"),
  /** Temperatures of the air and of things that touch the parcel, by the spread of each leg. */
  AMBIENT("temperature outside"),
  /** Absorptance of the parcel's outside for the sun, over the range that each leg states. */
  SOLAR_ABSORPTANCE("how much sun the box takes up"),
  /** Width of the seams, times {@link Openings#gapFactors}. */
  SEAMS("how wide the seams gape"),
  /** What foam lets through, over {@link FoamPanel#EXPANDED_POLYSTYRENE_RANGE}. */
  FOAM_DIFFUSIVITY("air through the foam"),
  /** How readily the powder of warmers reacts, times {@link #REACTIONS}: it decides in the cold. */
  REACTION("how readily the warmer burns"),
  /**
   * Activation energy of the powder of warmers, over {@link PowderKinetics#ACTIVATIONS}: how much
   * less readily it reacts below 40 °C, and more above.
   */
  ACTIVATION_ENERGY("how much the cold slows the warmer"),
  /** How fast damp bedding and animals evaporate, times {@link #EVAPORATIONS}. */
  EVAPORATION("evaporation from bedding and animal"),
  /** What animals breathe and the heat they give, times {@link #METABOLISMS}. */
  METABOLISM("heat of the animal"),
  /** Conductivity of the air in vessels, times {@link #CUP_AIRS}. */
  CUP_AIR("air around the animal"),
  /**
   * How deep a parcel lies where it lies among others: from the outside of the pile to its middle,
   * see {@link stenotherm.ambient.Stowage#depth}. There is nothing beyond the ends.
   */
  STOWAGE("depth among other parcels");

  /** Range of the factor on the conductance of warmers' powder. */
  public static final Range REACTIONS = new Range(0.4, 2.5);

  /** Where that range comes from. */
  public static final Source REACTION_SOURCE =
      Source.assumed("no kinetics of salted wet iron was found: 0.4 to 2.5 of the usual rate");

  /** Range of the factor on evaporation. */
  public static final Range EVAPORATIONS = new Range(0.3, 3);

  /** Where that range comes from. */
  public static final Source EVAPORATION_SOURCE =
      Source.assumed(
          "still air of 10 mm over damp bedding: 0.3 to 3 times what diffuses through it");

  /** Range of the factor on metabolism. */
  public static final Range METABOLISMS = new Range(0.5, 2);

  /** Where that range comes from. */
  public static final Source METABOLISM_SOURCE =
      Source.assumed(
          "single animals differ from the law of their group by a factor of two or more");

  /** Range of the factor on the conductivity of the air in vessels. */
  public static final Range CUP_AIRS = new Range(0.5, 2);

  /** Where that range comes from. */
  public static final Source CUP_AIR_SOURCE =
      Source.assumed("air around an animal moves more or less than in a layer: half or twice");

  /** Range of the factor on surface coefficients. */
  public static final Range FILM_FACTORS = new Range(0.7, 1.4);

  /** Where that range comes from. */
  public static final Source FILM_SOURCE =
      Source.assumed(
          "surface coefficients of a parcel among others lie within 0.7 to 1.4 of the rule's");

  private final String words;

  Factor(String words) {
    this.words = words;
  }

  /**
   * Tells whether a packing on a journey depends on this quantity.
   *
   * @param parcel the packing
   * @param journey the journey
   * @return false if it changes nothing
   */
  public boolean matters(Parcel parcel, Journey journey) {
    return switch (this) {
      case WARMER_STRENGTH -> !parcel.warmers().isEmpty();
      case RATING_BENCH -> parcel.warmers().stream().anyMatch(each -> each.warmer().isRated());
      case REACTION, ACTIVATION_ENERGY ->
          parcel.warmers().stream().anyMatch(each -> each.warmer().heat() instanceof IronPowder);
      case SEAMS -> parcel.openings().seamGap() > 0;
      case SOLAR_ABSORPTANCE ->
          journey.legs().stream().anyMatch(leg -> leg.surroundings().hasSun());
      case STOWAGE ->
          journey.legs().stream()
              .anyMatch(leg -> leg.surroundings().stowage() == Stowage.AMONG_OTHERS);
      case WALL_CONDUCTIVITY,
          FILL_CONDUCTIVITY,
          SURFACE_FILM,
          AMBIENT,
          FOAM_DIFFUSIVITY,
          EVAPORATION,
          METABOLISM,
          CUP_AIR ->
          true;
    };
  }

  /** Tells whether it changes what conducts, which a reduced model must be built for. */
  boolean changesConduction() {
    return switch (this) {
      case WALL_CONDUCTIVITY,
          FILL_CONDUCTIVITY,
          SURFACE_FILM,
          SOLAR_ABSORPTANCE,
          STOWAGE,
          CUP_AIR ->
          true;
      case WARMER_STRENGTH,
          RATING_BENCH,
          AMBIENT,
          SEAMS,
          FOAM_DIFFUSIVITY,
          REACTION,
          ACTIVATION_ENERGY,
          EVAPORATION,
          METABOLISM ->
          false;
    };
  }

  /**
   * Returns the words that reports use.
   *
   * @return for example "insulation of the walls"
   */
  public String words() {
    return words;
  }
}
