package plantair.api;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import plantair.pumpup.PossibleRange;

/** Between which bounds a number can be true, in SI. */
@Target(ElementType.RECORD_COMPONENT)
@Retention(RetentionPolicy.RUNTIME)
@interface Limits {

    /** The range that the forms keep to as well; none or one. */
    PossibleRange[] range() default {};

    /** Bound that is not allowed itself. */
    double above() default Double.NEGATIVE_INFINITY;

    /** Bound that is allowed itself. */
    double to() default Double.POSITIVE_INFINITY;
}
