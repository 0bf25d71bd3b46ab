/**
 * What is made of the readings of crews: the gate they pass, the factor in force at their time, the air, its uncertainty and what is
 * said of the load. Reads records and evidence; imported by intake, command and desk.
 */
@NullMarked
package porebench.evidence.field;

import org.jspecify.annotations.NullMarked;
