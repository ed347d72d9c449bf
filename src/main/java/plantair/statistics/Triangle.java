package plantair.statistics;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * The triangle R of columns made orthogonal one after the other (QR by Householder's reflections). A column that depends on
 * those before it is left out: what it has of its own is rounding.
 */
final class Triangle {

    private static final double DEPENDENT = 1e-10;

    private final double[][] r;
    private final boolean[] independent;

    /**
     * Takes the columns in their order; the last one is never left out.
     *
     * @param columns all of one length, which is at least their number
     */
    Triangle(double[][] columns) {
        int count = columns.length;
        List<Integer> kept = new ArrayList<>();
        for (int j = 0; j < count; j++) {
            kept.add(j);
        }
        RealMatrix triangle = decompose(columns, kept);
        for (int dependent = firstDependent(triangle, columns, kept);
                dependent >= 0;
                dependent = firstDependent(triangle, columns, kept)) {
            kept.remove(dependent);
            triangle = decompose(columns, kept);
        }
        r = new double[count][count];
        independent = new boolean[count];
        for (int j = 0; j < kept.size(); j++) {
            independent[kept.get(j)] = true;
            for (int i = 0; i <= j; i++) {
                r[kept.get(i)][kept.get(j)] = triangle.getEntry(i, j);
            }
        }
    }

    private static RealMatrix decompose(double[][] columns, List<Integer> kept) {
        RealMatrix matrix = MatrixUtils.createRealMatrix(columns[0].length, kept.size());
        for (int j = 0; j < kept.size(); j++) {
            matrix.setColumn(j, columns[kept.get(j)]);
        }
        return new QRDecomposition(matrix).getR();
    }

    /** Place among those kept of the first one that has nothing of its own; −1 when there is none. */
    private static int firstDependent(RealMatrix triangle, double[][] columns, List<Integer> kept) {
        for (int j = 0; j < kept.size() - 1; j++) {
            double[] column = columns[kept.get(j)];
            double own = Math.abs(triangle.getEntry(j, j));
            if (own <= DEPENDENT * Math.sqrt(product(column, column))) {
                return j;
            }
        }
        return -1;
    }

    boolean isIndependent(int j) {
        return independent[j];
    }

    /** Part of orthogonal column i in column j; for i = j what column j has of its own, give or take its sign. */
    double get(int i, int j) {
        return r[i][j];
    }

    /** Inverse of the first columns, those left out that depend on others: zero there. */
    double[][] inverse(int size) {
        double[][] inverse = new double[size][size];
        for (int j = 0; j < size; j++) {
            if (independent[j]) {
                inverse[j][j] = 1 / r[j][j];
                for (int i = j - 1; i >= 0; i--) {
                    inverse[i][j] = independent[i] ? -above(i, j, inverse) / r[i][i] : 0;
                }
            }
        }
        return inverse;
    }

    private double above(int i, int j, double[][] inverse) {
        double sum = 0;
        for (int k = i + 1; k <= j; k++) {
            sum += r[i][k] * inverse[k][j];
        }
        return sum;
    }

    static double product(double[] one, double[] other) {
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            sum += one[i] * other[i];
        }
        return sum;
    }
}
