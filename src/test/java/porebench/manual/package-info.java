/** Tests that hold the manual against the program. */
package porebench.manual;
