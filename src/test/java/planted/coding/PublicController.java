package planted.coding;

import org.springframework.stereotype.Controller;

/** A controller that is public. */
@Controller
public class PublicController {}
