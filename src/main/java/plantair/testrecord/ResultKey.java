package plantair.testrecord;

import jakarta.persistence.Embeddable;
import java.io.Serializable;

/**
 * A result is of one test by one method.
 *
 * @param testId the test
 * @param methodVersion the method
 */
@Embeddable
record ResultKey(long testId, String methodVersion) implements Serializable {}
