package stenotherm.grid;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ArbitrarySupplier;
import net.jqwik.api.Combinators;
import stenotherm.material.Material;

/**
 * Random layouts for property tests: a domain, up to four solid blocks that overlap as they like,
 * and at times an environment on top. Block faces lie on eighths of the domain, so that many of
 * them coincide.
 */
public final class RandomLayouts implements ArbitrarySupplier<Layout> {
  private static final int PARTS = 8;

  @Override
  public Arbitrary<Layout> get() {
    return Combinators.combine(extent(), material(), pieces(), environment())
        .as(this::layout)
        .withoutEdgeCases();
  }

  /** Domain sizes [m]. */
  private static Arbitrary<Point> extent() {
    Arbitrary<Double> size = Arbitraries.doubles().between(0.05, 0.5).ofScale(3);
    return Combinators.combine(size, size, size).as(Point::new);
  }

  /** Conductivities over four decades, heat capacities over one. */
  private static Arbitrary<Material> material() {
    return Combinators.combine(
            Arbitraries.doubles().between(-1.7, 2.3).ofScale(2),
            Arbitraries.doubles().between(20, 3000).ofScale(0))
        .as((exponent, density) -> Material.of("any", Math.pow(10, exponent), density, 1000));
  }

  /** A part of the domain in eighths. */
  private record Part(int[] low, int[] high) {}

  private static Arbitrary<Part> part() {
    Arbitrary<Integer> start = Arbitraries.integers().between(0, PARTS - 1);
    Arbitrary<int[]> starts = start.array(int[].class).ofSize(3);
    return Combinators.combine(starts, starts)
        .as(
            (low, length) -> {
              int[] high = new int[3];
              for (int axis = 0; axis < 3; axis++) {
                high[axis] = Math.min(PARTS, low[axis] + 1 + length[axis]);
              }
              return new Part(low, high);
            });
  }

  private record Piece(Part part, Material material) {}

  private static Arbitrary<List<Piece>> pieces() {
    return Combinators.combine(part(), material()).as(Piece::new).list().ofMaxSize(4);
  }

  /** None, or a part that leaves some of the domain. */
  private static Arbitrary<List<Part>> environment() {
    return part().filter(part -> part.high()[0] - part.low()[0] < PARTS).list().ofMaxSize(1);
  }

  private Layout layout(Point size, Material domain, List<Piece> pieces, List<Part> environments) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Solid("domain", Box.ofSize(size.x(), size.y(), size.z()), domain));
    for (Piece piece : pieces) {
      String name = "block" + blocks.size();
      blocks.add(new Block.Solid(name, box(size, piece.part()), piece.material()));
    }
    for (Part part : environments) {
      blocks.add(new Block.Environment("air", box(size, part)));
    }
    return new Layout(blocks);
  }

  private static Box box(Point size, Part part) {
    return new Box(corner(size, part.low()), corner(size, part.high()));
  }

  private static Point corner(Point size, int[] eighths) {
    return new Point(
        size.x() * eighths[0] / PARTS,
        size.y() * eighths[1] / PARTS,
        size.z() * eighths[2] / PARTS);
  }
}
