/** Results as comma separated values (RFC 4180), for spreadsheets and plotting programs. */
package dev.towerscribe.report.csv;
