package planted.coding;

import org.springframework.web.bind.annotation.RestController;

/** A controller whose name does not say so. */
@RestController
public class MisnamedEndpoint {}
