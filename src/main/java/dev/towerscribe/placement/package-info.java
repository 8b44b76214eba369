/** Where the plate goes and what comes of it: joins layout and alignment. */
package dev.towerscribe.placement;
