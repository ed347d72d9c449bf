package planted.quantity;

import org.springframework.stereotype.Component;

/** A pure class with a framework's annotation. */
@Component
public class KnowsFramework {}
