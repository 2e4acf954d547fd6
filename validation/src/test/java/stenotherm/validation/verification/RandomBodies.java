package stenotherm.validation.verification;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ArbitrarySupplier;
import net.jqwik.api.Combinators;
import stenotherm.base.Face;
import stenotherm.grid.Point;
import stenotherm.material.Material;
import stenotherm.validation.verification.Body.Drive;
import stenotherm.validation.verification.Body.Extent;
import stenotherm.validation.verification.Body.Kind;
import stenotherm.validation.verification.Body.Part;
import stenotherm.validation.verification.Body.Surface;

/**
 * Random bodies: up to four blocks that overlap as they like and at times air among them,
 * conductivities over four decades, films over three, half of the blocks within a thin resistance,
 * a third of them heated. The face x = 0 or, where there is any, the air fixes the level.
 */
final class RandomBodies implements ArbitrarySupplier<Body> {
  /** Lowest and highest temperature that drives a body or that it starts from [K]. */
  static final double COLDEST = 250;

  static final double WARMEST = 330;

  @Override
  public Arbitrary<Body> get() {
    Arbitrary<Double> size = Arbitraries.doubles().between(0.05, 0.5).ofScale(3);
    Arbitrary<Point> sizes = Combinators.combine(size, size, size).as(Point::new);
    return Combinators.combine(
            sizes,
            part().list().ofMinSize(1).ofMaxSize(5),
            // what is left of it at x = 0 keeps that face a surface
            extent().filter(extent -> extent.low().get(0) > 0).list().ofMaxSize(1),
            surface(Kind.values()).list().ofSize(5),
            surface(Kind.FILM, Kind.HELD),
            surface(Kind.FILM, Kind.HELD),
            Arbitraries.doubles().between(300, 3000).ofScale(0))
        .as(RandomBodies::body)
        .withoutEdgeCases();
  }

  private static Body body(
      Point size,
      List<Part> pieces,
      List<Extent> air,
      List<Surface> surfaces,
      Surface first,
      Surface atAir,
      double jump) {
    List<Part> parts = new ArrayList<>();
    for (Part piece : pieces) {
      Extent extent =
          parts.isEmpty() ? new Extent(List.of(0, 0, 0), List.of(8, 8, 8)) : piece.extent();
      parts.add(
          new Part(
              "block" + parts.size(),
              extent,
              piece.material(),
              piece.resistance(),
              piece.power(),
              piece.start()));
    }
    Map<Face, Surface> faces = new EnumMap<>(Face.class);
    for (Face face : Face.values()) {
      faces.put(face, face == Face.X_MIN ? first : surfaces.get(face.ordinal() - 1));
    }
    return new Body(size, parts, air, faces, atAir, jump);
  }

  private static Arbitrary<Extent> extent() {
    Arbitrary<List<Integer>> starts =
        Arbitraries.integers().between(0, Body.PARTS - 1).list().ofSize(3);
    return Combinators.combine(starts, starts)
        .as(
            (low, length) -> {
              List<Integer> high = new ArrayList<>();
              for (int axis = 0; axis < 3; axis++) {
                high.add(Math.min(Body.PARTS, low.get(axis) + 1 + length.get(axis)));
              }
              return new Extent(low, high);
            });
  }

  static Arbitrary<Double> temperature() {
    return Arbitraries.doubles().between(COLDEST, WARMEST).ofScale(1);
  }

  private static Arbitrary<Drive> drive(Arbitrary<Double> values) {
    return Combinators.combine(values, values, values).as(Drive::new);
  }

  private static Arbitrary<Double> decades(double low, double high) {
    return Arbitraries.doubles()
        .between(low, high)
        .ofScale(2)
        .map(exponent -> Math.pow(10, exponent));
  }

  private static Arbitrary<Part> part() {
    Arbitrary<Material> material =
        Combinators.combine(decades(-1.7, 2.3), Arbitraries.doubles().between(20, 3000).ofScale(0))
            .as((conductivity, density) -> Material.of("any", conductivity, density, 1000));
    Arbitrary<Double> resistance = Arbitraries.oneOf(Arbitraries.just(0.0), decades(-4, 0));
    Arbitrary<Drive> heated = drive(Arbitraries.doubles().between(-5, 20).ofScale(1));
    Arbitrary<Drive> idle = Arbitraries.just(Drive.constant(0));
    return Combinators.combine(
            extent(), material, resistance, Arbitraries.oneOf(idle, idle, heated), temperature())
        .as(
            (extent, of, around, power, start) ->
                new Part("piece", extent, of, around, power, start));
  }

  private static Arbitrary<Surface> surface(Kind... kinds) {
    Arbitrary<Drive> flux = drive(Arbitraries.doubles().between(-50, 50).ofScale(0));
    return Combinators.combine(Arbitraries.of(kinds), decades(0, 3), drive(temperature()), flux)
        .as(
            (kind, coefficient, temperatures, fluxes) ->
                new Surface(kind, coefficient, kind == Kind.FLUX ? fluxes : temperatures));
  }
}
