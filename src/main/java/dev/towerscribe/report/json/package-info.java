/**
 * Results as data for other programs: a class a subject, each one JSON object (RFC 8259) on one
 * line, in millimetres and degrees whatever the job's units. The keys are a contract of their own
 * and do not follow the words of the reports. With {@code job} the only user of Jackson.
 */
package dev.towerscribe.report.json;
