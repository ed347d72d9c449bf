/** Makes the invented demo plant: simulated machines, tanks, gauges and weather, read as a technician would read them. */
@NullMarked
package plantair.demo;

import org.jspecify.annotations.NullMarked;
