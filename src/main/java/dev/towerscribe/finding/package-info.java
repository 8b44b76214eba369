/**
 * What the program has to say about a job: faults of the input ({@link
 * dev.towerscribe.finding.Fault}) and results of its checks ({@link
 * dev.towerscribe.finding.Finding}).
 */
package dev.towerscribe.finding;
