package dev.hingepoint.svg.print;

import dev.hingepoint.pattern.Cutting;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.Grain;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.svg.file.CuttingText;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What one drawing shows of a piece: its paper, all of what lies on the fold, or one of a pair. */
enum Copy {
    AS_DRAWN(Cutting.How.SINGLE),
    UNFOLDED(Cutting.How.ON_FOLD),
    ONE_OF_PAIR(Cutting.How.PAIR),
    OTHER_OF_PAIR(Cutting.How.PAIR);

    private final Cutting.How how;

    Copy(Cutting.How how) {
        this.how = how;
    }

    /** The drawings of a piece: how it is cut from its main cloth decides. */
    static List<Copy> of(Piece piece, PrintOptions options) {
        // cloth that is folded along its grain has no fold that a slanting strip could lie on
        boolean isSlanting = Grain.slanting(piece).isPresent();
        if (options.pieces() == PrintOptions.Pieces.AS_DRAWN && !isSlanting) {
            return List.of(AS_DRAWN);
        }
        return switch (main(piece.cuttings()).map(Cutting::how).orElse(Cutting.How.SINGLE)) {
            case SINGLE -> List.of(AS_DRAWN);
            case PAIR -> List.of(ONE_OF_PAIR, OTHER_OF_PAIR);
            case ON_FOLD ->
                piece.edges().stream().anyMatch(edge -> edge.kind() == Edge.Kind.FOLD)
                        ? List.of(UNFOLDED)
                        : List.of(AS_DRAWN);
        };
    }

    private static Optional<Cutting> main(List<Cutting> cuttings) {
        return cuttings.stream()
                .filter(Cutting::isMainCloth)
                .findFirst()
                .or(() ->
                        cuttings.stream().filter(cutting -> !cutting.isInside()).findFirst())
                .or(() -> cuttings.stream().findFirst());
    }

    /** The piece's name, as this drawing of it is called. */
    String named(String piece) {
        return this == OTHER_OF_PAIR ? piece + ", mirrored" : piece;
    }

    /** How often this drawing is cut, a line for each cloth. The other of a pair says nothing of what is not cut as a pair: the one has said it. */
    List<String> cut(Piece piece) {
        return piece.cuttings().stream().flatMap(this::cut).toList();
    }

    private Stream<String> cut(Cutting cutting) {
        String asWritten = "cut " + CuttingText.write(cutting);
        String often = "cut " + cutting.count()
                + cutting.cloth().map(cloth -> " " + cloth).orElse("");
        boolean isShown = cutting.how() == how;
        boolean isOnePair = cutting.count() == 1;
        return switch (this) {
            case AS_DRAWN -> Stream.of(asWritten);
            case UNFOLDED -> Stream.of(isShown ? often + ", unfolded" : asWritten + ", of one half");
            case ONE_OF_PAIR ->
                Stream.of(isShown ? often + (isOnePair ? ": one of the pair" : ": one of each pair") : asWritten);
            case OTHER_OF_PAIR ->
                Stream.of(often + (isOnePair ? ": the other of the pair" : ": the other of each pair"))
                        .filter(line -> isShown);
        };
    }
}
