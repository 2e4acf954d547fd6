package stenotherm.warmer;

import stenotherm.base.Source;

/**
 * What iron becomes in a warmer. One enthalpy of formation is stated; the heat per mole of oxygen,
 * the heat per mass of iron and the oxygen per mass of iron all follow from it and the reaction.
 *
 * <p>Thread-safe.
 */
public enum OxidationProduct {
  /** Lepidocrocite: 4 Fe + 3 O2 + 2 H2O(l) = 4 FeOOH. The usual rust of wet iron with salt. */
  LEPIDOCROCITE(
      -549.4e3,
      0.75,
      0.5,
      Source.memory(
          "Majzlan, Grevel, Navrotsky 2003, American Mineralogist 88",
          "lepidocrocite, -549.4 kJ/mol")),
  /** Haematite: 4 Fe + 3 O2 = 2 Fe2O3. */
  HAEMATITE(-824.2e3 / 2, 0.75, 0, Source.memory("handbook tables", "Fe2O3, -824.2 kJ/mol")),
  /** Magnetite: 3 Fe + 2 O2 = Fe3O4. */
  MAGNETITE(-1118.4e3 / 3, 2.0 / 3, 0, Source.memory("handbook tables", "Fe3O4, -1118.4 kJ/mol"));

  /** Enthalpy of formation of liquid water [J/mol]; handbook tables, from memory. */
  private static final double WATER = -285.8e3;

  /** Molar mass of iron [kg/mol]; standard atomic weight, from memory. */
  static final double IRON_MOLAR_MASS = 0.055845;

  private final double formation;
  private final double oxygen;
  private final double water;
  private final Source source;

  /**
   * States a product.
   *
   * @param formation enthalpy of formation for one mole of iron [J/mol]
   * @param oxygen moles of oxygen for one of iron
   * @param water moles of liquid water for one of iron
   */
  OxidationProduct(double formation, double oxygen, double water, Source source) {
    this.formation = formation;
    this.oxygen = oxygen;
    this.water = water;
    this.source = source;
  }

  /**
   * Returns the heat that comes free.
   *
   * @return heat per oxygen taken up [J/mol]
   */
  public double heatPerOxygen() {
    return (water * WATER - formation) / oxygen;
  }

  /**
   * Returns the heat that all of the iron gives.
   *
   * @return heat per mass of iron [J/kg]
   */
  public double heatPerIron() {
    return heatPerOxygen() * oxygenPerIron();
  }

  /**
   * Returns the oxygen that all of the iron takes.
   *
   * @return oxygen per mass of iron [mol/kg]
   */
  public double oxygenPerIron() {
    return oxygen / IRON_MOLAR_MASS;
  }

  /**
   * Returns the water that the product binds.
   *
   * @return water per oxygen taken up [mol/mol]
   */
  public double waterPerOxygen() {
    return water / oxygen;
  }

  /**
   * Returns where the enthalpy comes from.
   *
   * @return the source
   */
  public Source source() {
    return source;
  }
}
