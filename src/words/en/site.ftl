# English, in Fluent syntax: what Site says.

site-heading = Your site’s standards

finish-ph-low = Lowest pH it bears
finish-ph-high = Highest pH it bears
finish-coats = Coats
finish-coverage = One coat covers
finish-dry = Dry time between coats
finish-dry-hint = From its label. Leave it empty for an estimate from the room’s air.
finish-solids = Solids in the finish
finish-cure = Wait before the first wet scrub
coat-area = Floor to strip and coat
strip-rate = Strip solution laid down
strip-dwell = Leave the strip solution on
rinse-ph = pH of the last rinse
trial-batch = Solution mixed for one patch
standard-contact = Keep the floor wet for
standard-contact-hint = Leave it empty for what the label asks.
standard-frequency = How often
