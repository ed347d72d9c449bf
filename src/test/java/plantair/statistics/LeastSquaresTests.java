package plantair.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LeastSquaresTests {

    private static final double[] ONES = {1, 1, 1, 1};
    private static final double[] X = {0, 1, 2, 4};
    private static final double[] Y = {1, 2, 2, 5};
    private static final double[] U = {1, 0.5, 2, 1};

    /**
     * Three ways to one answer: the textbook formula (XᵀC⁻¹X)⁻¹XᵀC⁻¹y with the full covariance matrix by Hipparchus, for
     * 40 results with two shared errors that overlap and a step.
     */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void agreesWithTheFullCovarianceMatrix(long seed) {
        Random random = new Random(seed);
        int n = 40;
        double[] t = IntStream.range(0, n).mapToDouble(i -> i / 4.0).toArray();
        double[] step = IntStream.range(0, n).mapToDouble(i -> i < 25 ? 0 : 1).toArray();
        double[] early = IntStream.range(0, n).mapToDouble(i -> i < 17 ? 1 : 0).toArray();
        double[] odd = IntStream.range(0, n).mapToDouble(i -> i % 2 * 0.7).toArray();
        double[] u = random.doubles(n, 0.01, 0.05).toArray();
        double[] y = random.doubles(n, -1, 1).toArray();
        double[] ones = filled(n);

        LeastSquares fit = LeastSquares.fit(
                List.of(
                        Column.free(ones),
                        Column.free(step),
                        Column.sharedError(0.03, early),
                        Column.free(t),
                        Column.sharedError(0.1, odd)),
                y,
                u);

        RealMatrix covariance = MatrixUtils.createRealDiagonalMatrix(
                        Arrays.stream(u).map(each -> each * each).toArray())
                .add(outer(early).scalarMultiply(0.03 * 0.03))
                .add(outer(odd).scalarMultiply(0.1 * 0.1));
        RealMatrix weight = new CholeskyDecomposition(covariance).getSolver().getInverse();
        RealMatrix x =
                MatrixUtils.createRealMatrix(new double[][] {ones, step, t}).transpose();
        RealMatrix unknowns = new CholeskyDecomposition(
                        x.transpose().multiply(weight).multiply(x), 1e-9, 1e-12)
                .getSolver()
                .getInverse();
        RealVector best = unknowns.multiply(x.transpose()).multiply(weight).operate(MatrixUtils.createRealVector(y));
        RealVector left = MatrixUtils.createRealVector(y).subtract(x.operate(best));
        int[] free = {0, 1, 3};
        for (int i = 0; i < 3; i++) {
            assertThat(fit.value(free[i])).isCloseTo(best.getEntry(i), within(1e-11));
            assertThat(fit.uncertainty(free[i])).isCloseTo(Math.sqrt(unknowns.getEntry(i, i)), within(1e-12));
        }
        assertThat(fit.covarianceOf(new double[] {1, 0, 0, 0, 0}, new double[] {0, 0, 0, 1, 0}))
                .isCloseTo(unknowns.getEntry(0, 2), within(1e-13));
        assertThat(fit.chiSquare() / left.dotProduct(weight.operate(left))).isCloseTo(1, within(1e-11));
        assertThat(fit.degreesOfFreedom()).isEqualTo(37);
    }

    @Test
    void leavesOutAColumnThatDependsOnOthersAndCountsNoDegreeForIt() {
        LeastSquares fit = LeastSquares.fit(
                List.of(Column.free(ONES), Column.free(X), Column.free(1, 3, 5, 9), Column.free(0, 0, 1, 1)), Y, U);

        LeastSquares without =
                LeastSquares.fit(List.of(Column.free(ONES), Column.free(X), Column.free(0, 0, 1, 1)), Y, U);
        assertThat(fit.isDetermined(2)).isFalse();
        assertThat(fit.isDetermined(3)).isTrue();
        assertThat(fit.value(2)).isZero();
        assertThat(fit.uncertainty(2)).isZero();
        assertThat(fit.value(3)).isEqualTo(without.value(2));
        assertThat(fit.uncertainty(1)).isEqualTo(without.uncertainty(1));
        assertThat(fit.chiSquare()).isEqualTo(without.chiSquare());
        assertThat(fit.degreesOfFreedom()).isEqualTo(1);
    }

    @Test
    void tellsAnAllZeroColumnFromNothing() {
        LeastSquares fit = LeastSquares.fit(List.of(Column.free(ONES), Column.free(0, 0, 0, 0)), Y, U);

        assertThat(fit.isDetermined(1)).isFalse();
        assertThat(fit.degreesOfFreedom()).isEqualTo(3);
    }

    /** A shared error known to almost nothing is a free offset, one known almost exactly is none. */
    @Test
    void liesBetweenAFreeOffsetAndNone() {
        Column late = Column.free(0, 0, 1, 1);
        List<Column> line = List.of(Column.free(ONES), Column.free(X));

        LeastSquares wide =
                LeastSquares.fit(List.of(line.get(0), line.get(1), Column.sharedError(1e5, late.parts())), Y, U);
        LeastSquares narrow =
                LeastSquares.fit(List.of(line.get(0), line.get(1), Column.sharedError(1e-6, late.parts())), Y, U);

        LeastSquares free = LeastSquares.fit(List.of(line.get(0), line.get(1), late), Y, U);
        assertThat(wide.value(1)).isCloseTo(free.value(1), within(1e-8));
        assertThat(wide.uncertainty(1)).isCloseTo(free.uncertainty(1), within(1e-8));
        LeastSquares none = LeastSquares.fit(line, Y, U);
        assertThat(narrow.value(1)).isCloseTo(none.value(1), within(1e-8));
        assertThat(narrow.uncertainty(1)).isCloseTo(none.uncertainty(1), within(1e-8));
    }

    @Test
    void keepsTheSlopeFromAnErrorThatAllShare() {
        LeastSquares fit =
                LeastSquares.fit(List.of(Column.free(ONES), Column.free(X), Column.sharedError(0.05, ONES)), Y, U);

        LeastSquares alone = LeastSquares.fit(List.of(Column.free(ONES), Column.free(X)), Y, U);
        assertThat(fit.value(1)).isCloseTo(alone.value(1), within(1e-14));
        assertThat(fit.uncertainty(1)).isCloseTo(alone.uncertainty(1), within(1e-14));
        assertThat(fit.uncertainty(0)).isCloseTo(Math.hypot(alone.uncertainty(0), 0.05), within(1e-14));
    }

    @Test
    void refusesBadNumbersAndLengths() {
        List<Column> one = List.of(Column.free(ONES));

        assertThatIllegalArgumentException().isThrownBy(() -> LeastSquares.fit(one, Y, new double[] {1, 1, 1}));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LeastSquares.fit(one, new double[] {1}, new double[] {1}));
        assertThatIllegalArgumentException().isThrownBy(() -> LeastSquares.fit(one, new double[0], new double[0]));
        assertThatIllegalArgumentException().isThrownBy(() -> LeastSquares.fit(one, Y, new double[] {1, 0, 1, 1}));
        assertThatIllegalArgumentException().isThrownBy(() -> LeastSquares.fit(one, new double[] {1, 2, 3, 1e300}, U));
        assertThatIllegalArgumentException().isThrownBy(() -> Column.free(1, Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> Column.sharedError(0, ONES));
        assertThatIllegalArgumentException().isThrownBy(() -> Column.sharedError(Double.POSITIVE_INFINITY, ONES));
        assertThatIllegalArgumentException().isThrownBy(() -> new Column(ONES, Double.NaN));
    }

    private static RealMatrix outer(double[] parts) {
        RealVector vector = MatrixUtils.createRealVector(parts);
        return vector.outerProduct(vector);
    }

    private static double[] filled(int count) {
        double[] values = new double[count];
        Arrays.fill(values, 1);
        return values;
    }
}
