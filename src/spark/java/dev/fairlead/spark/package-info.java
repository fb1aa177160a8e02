/**
 * The audit as a job on Apache Spark, for registries beyond one machine: the same reading, rules and rows as in one
 * process.
 */
package dev.fairlead.spark;
