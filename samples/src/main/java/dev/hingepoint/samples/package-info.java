/** The program, the demo and runnable examples for embedders. Start with {@link dev.hingepoint.samples.Hingepoint}. */
package dev.hingepoint.samples;
