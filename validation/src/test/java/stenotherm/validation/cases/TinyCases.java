package stenotherm.validation.cases;

/** Small cases that solve at once. */
final class TinyCases {
  /** One metre of k = 1 between 300 K and a film of 10 W/(m2 K) at 273.15 K: 24.409 W. */
  static final String STEADY =
      """
      id: tiny
      title: a wall
      source: resistances in series
      domain: {x: [0, 1], y: [0, 1], z: [0, 1]}
      blocks:
        - {name: wall, conductivity: 1}
      boundaries:
        xMin: {kind: temperature, value: 300}
        xMax: {kind: convection, coefficient: 10, ambient: 273.15}
        yMin: {kind: adiabatic}
        yMax: {kind: adiabatic}
        zMin: {kind: adiabatic}
        zMax: {kind: adiabatic}
      run: {kind: steady}
      probes:
        - {name: cold, point: [1, 0.5, 0.5]}
        - {name: out, heatOut: xMax}
      reference:
        - {probe: cold, value: 275.590909, tolerance: 0.01, unit: K}
        - {probe: out, value: 24.4090909, tolerance: 1 %, unit: W}
      """;

  static final String TRANSIENT =
      """
      format: 1
      id: plate
      title: a plate under a varying ambient
      source: made up
      kind: verification
      domain: {x: [0, 0.1], y: [0, 1], z: [0, 1]}
      blocks:
        - {name: plate, conductivity: 1, density: 1000, specificHeat: 1000,
           power: [[0, 2], [300, 4]]}
      boundaries:
        xMin: {kind: convection, coefficient: 5,
               ambient: {mean: 290, amplitude: 5, period: 600, phase: 0.5}}
        xMax: {kind: adiabatic}
        yMin: {kind: adiabatic}
        yMax: {kind: adiabatic}
        zMin: {kind: adiabatic}
        zMax: {kind: adiabatic}
      initial: 293.15
      run: {kind: transient, until: 600}
      probes:
        - {name: middle, point: [0.05, 0.5, 0.5]}
        - {name: mean, mean: plate}
        - {name: out, heatOut: xMin}
      reference:
        - {probe: middle, time: 300, value: 20, tolerance: 1 %, unit: °C, why: rounding}
        - {probe: mean, time: 600, value: 293.1, tolerance: 1, unit: K, source: a book}
        - {probe: out, time: 300, value: 14, tolerance: 30, unit: W}
      """;

  /** Like {@link #STEADY} with another id and a wrong value. */
  static String wrong() {
    return STEADY.replace("id: tiny", "id: wrong").replace("value: 275.590909", "value: 276");
  }

  private TinyCases() {}
}
