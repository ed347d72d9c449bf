package planted.coding;

import java.time.Clock;
import org.springframework.beans.factory.annotation.Autowired;

/** Injection into a field. */
public class FieldInjection {

    @Autowired
    Clock clock;
}
