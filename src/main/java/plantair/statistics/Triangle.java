package plantair.statistics;

/**
 * Columns made orthogonal one after the other (modified Gram-Schmidt, each twice), and the triangle R that makes them again
 * from the orthogonal ones. Twice is enough: L. Giraud and others, Numerische Mathematik 101, 87 (2005), from memory.
 *
 * <p>A column may be longer than the one before it; what is missing there is zero.
 */
final class Triangle {

    private static final double DEPENDENT = 1e-10;

    private final double[][] r;
    private final boolean[] independent;

    /** Uses the columns up. */
    Triangle(double[][] columns) {
        int count = columns.length;
        r = new double[count][count];
        independent = new boolean[count];
        for (int j = 0; j < count; j++) {
            double before = norm(columns[j]);
            takeOutOthers(columns, j);
            takeOutOthers(columns, j);
            r[j][j] = Checks.finite(norm(columns[j]), "column " + j);
            independent[j] = r[j][j] > DEPENDENT * before;
            if (independent[j]) {
                scale(columns[j], r[j][j]);
            }
        }
    }

    private void takeOutOthers(double[][] columns, int j) {
        double[] column = columns[j];
        for (int i = 0; i < j; i++) {
            if (independent[i]) {
                double part = product(columns[i], column);
                r[i][j] += part;
                for (int row = 0; row < columns[i].length; row++) {
                    column[row] -= part * columns[i][row];
                }
            }
        }
    }

    boolean isIndependent(int j) {
        return independent[j];
    }

    /** Part of orthogonal column i in column j; for i = j what column j has of its own. */
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

    static double product(double[] shorter, double[] longer) {
        double sum = 0;
        for (int i = 0; i < shorter.length; i++) {
            sum += shorter[i] * longer[i];
        }
        return sum;
    }

    private static double norm(double[] column) {
        return Math.sqrt(product(column, column));
    }

    private static void scale(double[] column, double by) {
        for (int i = 0; i < column.length; i++) {
            column[i] /= by;
        }
    }
}
