package stenotherm.conduction;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Suggestions;

/**
 * Finds inputs and films by name, so that arrays are filled without counting ports. Names are
 * looked up before a run; the loop over its steps then writes to positions:
 *
 * <pre>{@code
 * PortIndex index = PortIndex.of(engine.inputs());
 * engine.useCoefficients(index.films(Map.of("xMin", 8.0, "xMax", 25.0)));
 * double[] inputs = index.inputs(Map.of("xMin", 293.15, "xMax", 273.15, "lamp", 0.0));
 * int lamp = index.input("lamp");
 * while (engine.time() < 7200) {
 *   inputs[lamp] = engine.time() < 3600 ? 5 : 0;
 *   engine.advance(60, inputs, inputs);
 * }
 * }</pre>
 *
 * <p>Immutable, thus thread-safe.
 */
public final class PortIndex {
  private final List<Port> ports;
  private final List<String> names;

  private PortIndex(List<Port> ports) {
    this.ports = ports;
    this.names = ports.stream().map(Port::name).toList();
  }

  /**
   * Makes the index of a body's ports.
   *
   * @param inputs those of {@link HeatNetwork#inputs}, {@link HeatEngine#inputs} or a reduced
   *     model: boundary ports, then source ports
   * @return the index
   */
  public static PortIndex of(List<? extends Port> inputs) {
    return new PortIndex(List.copyOf(inputs));
  }

  /**
   * Finds an input.
   *
   * @param name name of the port
   * @return its index in arrays of inputs, as {@link HeatEngine#advance} takes them
   * @throws InvalidInputException if there is none; the message offers the closest name or lists
   *     all
   */
  public int input(String name) {
    int position = names.indexOf(name);
    if (position < 0) {
      throw Suggestions.unknown("input", name, names);
    }
    return position;
  }

  /**
   * Finds a film.
   *
   * @param name name of the boundary
   * @return its index in arrays of surface coefficients, as {@link HeatEngine#useCoefficients}
   *     takes them
   * @throws InvalidInputException if there is no such boundary, with the closest name or all names,
   *     or what has the name is no film
   */
  public int film(String name) {
    int position = names.indexOf(name);
    if (position >= 0 && !isFilm(ports.get(position))) {
      throw new InvalidInputException(
          "film", "'" + name + "' has none; its input is in " + ports.get(position).unit());
    }
    if (position < 0) {
      throw Suggestions.unknown(
          "film", name, ports.stream().filter(PortIndex::isFilm).map(Port::name).toList());
    }
    return position;
  }

  /**
   * Fills an array of inputs.
   *
   * @param values a value for every port by its name [K, W/m2 or W, see {@link Port#unit()}]
   * @return a new array in the order of the ports [K, W/m2 or W]
   * @throws InvalidInputException if a name does not exist, a port has no value, or a value is not
   *     finite
   */
  public double[] inputs(Map<String, Double> values) {
    values.keySet().forEach(this::input);
    double[] inputs = new double[ports.size()];
    for (int position = 0; position < inputs.length; position++) {
      Port port = ports.get(position);
      inputs[position] =
          Checks.finite(
              "input '" + port.name() + "'",
              given("input", port, values, port.unit()),
              port.unit());
    }
    return inputs;
  }

  /**
   * Fills an array of surface coefficients.
   *
   * @param coefficients a value for every film by its boundary's name [W/(m2 K)]
   * @return a new array in the order of the boundary ports, 0 for those that are no films [W/(m2
   *     K)]
   * @throws InvalidInputException if a name is not that of a film, a film has no value, or a value
   *     is negative or not finite
   */
  public double[] films(Map<String, Double> coefficients) {
    coefficients.keySet().forEach(this::film);
    double[] films =
        new double[(int) ports.stream().filter(Port.BoundaryPort.class::isInstance).count()];
    for (int position = 0; position < films.length; position++) {
      Port port = ports.get(position);
      if (isFilm(port)) {
        films[position] =
            Checks.notNegative(
                "film '" + port.name() + "'",
                given("film", port, coefficients, "W/(m2 K)"),
                "W/(m2 K)");
      }
    }
    return films;
  }

  /**
   * Refuses inputs that are no finite numbers.
   *
   * @param inputs the inputs, in the order of their values
   * @param values one for each input [K or W, as its port says]
   * @throws InvalidInputException if a value is not finite; the message names its input
   */
  public static void requireFinite(List<? extends Port> inputs, double[] values) {
    for (int position = 0; position < values.length; position++) {
      if (!Double.isFinite(values[position])) {
        Port port = inputs.get(position);
        Checks.finite("input '" + port.name() + "'", values[position], port.unit());
      }
    }
  }

  private static double given(String kind, Port port, Map<String, Double> values, String unit) {
    Double value = values.get(port.name());
    if (value == null) {
      throw new InvalidInputException(
          kind + " '" + port.name() + "'",
          "has no value ["
              + unit
              + "]; given are only "
              + values.keySet().stream().sorted().collect(Collectors.joining(", ")));
    }
    return value;
  }

  private static boolean isFilm(Port port) {
    return port instanceof Port.BoundaryPort boundary && boundary.kind() == BoundaryKind.CONVECTION;
  }
}
