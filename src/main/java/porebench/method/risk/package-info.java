/**
 * What a wrong factor does to loads: the shares that are passed or failed wrongly.
 */
@NullMarked
package porebench.method.risk;

import org.jspecify.annotations.NullMarked;
