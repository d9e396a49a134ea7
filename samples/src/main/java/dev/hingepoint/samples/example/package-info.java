/**
 * Runnable examples for those who embed the library, each a class with a {@code main} that says what it shows and how to run it.
 *
 * <p>Start with {@link dev.hingepoint.samples.example.FiveLines}. {@link dev.hingepoint.samples.example.Batch} is small enough to be taken along.
 */
package dev.hingepoint.samples.example;
