package plantair.testing;

import java.lang.annotation.ElementType;
import java.lang.annotation.Inherited;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * A test that takes a {@link Browser} as parameter. Without a Chromium on the machine it is skipped and the log says so;
 * where the environment variable CI is set it fails instead.
 */
@Target({ElementType.TYPE, ElementType.METHOD})
@Retention(RetentionPolicy.RUNTIME)
@Inherited
@Tag("browser")
@ExtendWith(BrowserExtension.class)
public @interface NeedsBrowser {}
