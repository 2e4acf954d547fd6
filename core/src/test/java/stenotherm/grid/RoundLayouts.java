package stenotherm.grid;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ArbitrarySupplier;
import net.jqwik.api.Combinators;
import stenotherm.material.Material;

/**
 * Random nests for property tests: up to four blocks one within the other, each a box or a cylinder
 * along any axis, in a box of solid or in a room. Each leaves some of the one around it.
 */
public final class RoundLayouts implements ArbitrarySupplier<Layout> {
  /** A block by its shape, its material and where it begins and ends in the one around it. */
  private record Piece(Shape shape, Material material, double start, double end) {}

  @Override
  public Arbitrary<Layout> get() {
    return Combinators.combine(
            Arbitraries.doubles().between(0.05, 0.5).ofScale(3).array(double[].class).ofSize(3),
            piece().list().ofMinSize(1).ofMaxSize(4),
            Arbitraries.of(true, false))
        .as(RoundLayouts::layout)
        .withoutEdgeCases();
  }

  private static Arbitrary<Piece> piece() {
    Arbitrary<Material> material =
        Arbitraries.doubles()
            .between(-1.7, 2.3)
            .ofScale(2)
            .map(exponent -> Material.of("any", Math.pow(10, exponent), 500, 1000));
    return Combinators.combine(
            Arbitraries.of(Shape.class),
            material,
            Arbitraries.doubles().between(0.05, 0.25).ofScale(3),
            Arbitraries.doubles().between(0.7, 0.95).ofScale(3))
        .as(Piece::new);
  }

  private static Layout layout(double[] size, List<Piece> pieces, boolean inRoom) {
    List<Block> blocks = new ArrayList<>();
    Box box = Box.ofSize(size[0], size[1], size[2]);
    blocks.add(
        inRoom
            ? new Block.Environment("room", box)
            : new Block.Solid("domain", box, pieces.get(0).material()));
    for (Piece piece : pieces) {
      box = new Box(within(box, piece.start()), within(box, piece.end()));
      blocks.add(new Block.Solid("block" + blocks.size(), box, piece.material(), piece.shape()));
    }
    return new Layout(blocks);
  }

  private static Point within(Box box, double part) {
    Point min = box.min();
    Point max = box.max();
    return new Point(
        min.x() + part * (max.x() - min.x()),
        min.y() + part * (max.y() - min.y()),
        min.z() + part * (max.z() - min.z()));
  }
}
