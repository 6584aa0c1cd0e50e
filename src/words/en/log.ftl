# What Log says, and the record below Fill's answer. English, sentence case, short words.

## Recording a fill
log-recording = The record
record-fill = Record this fill
record-fill-rests = Recorded already
record-fill-waits = Not kept yet
log-recorded = Recorded { $time }, number { $number }.
log-recorded-other = { $machine }, { $day }: recorded { $time }, number { $number }.
log-not-recorded = Not recorded: { $why }
log-correct-it = Correct it
log-stopped = You cannot record this plan: a warning stands in the way of it.
log-stopped-way = Write down what you really did
log-details = Add to the record before you tap
log-details-next = That fill is recorded. What you type now goes with the next one: { $product } in { $machine }. To add to the one that is recorded, press “Correct it”.
log-details-for = It goes with the next record: { $product } in { $machine }.
log-details-hint = All of it may stay empty. It is cleared once recorded, and when you then go on to another machine, product or floor; your initials stay on this device.
log-who = Your initials
log-who-hint = Two or three letters. They can be erased from the log later.
log-areas = Areas that this fill is for
log-area = Add an area
log-area-more = Choose an area
log-measured = Concentrate that you measured out
log-measured-hint = Leave it empty where you took what the page said and did not measure.
log-no-volume = This dose is no volume. What you weighed or counted goes into the notes.
log-scale = What the reading tells
log-scale-none = Nothing was read
log-scale-active = Active substance
log-scale-ratio = Strength of the solution
log-reading = Reading
log-reading-take = Take the reading of { $reading }
log-deviation = Did you do it otherwise?
log-deviation-none = No, as the page says
log-deviation-more = More concentrate
log-deviation-less = Less concentrate
log-deviation-other-product = Another product
log-deviation-other = Something else
log-other-product = Which product went in?
log-other-unlisted = None of these: I name it below
log-planned-other = planned: { $product }, { $dose }
log-other-rest = The fill is not counted for { $product }. The tank may hold a rest of another product: what is in it and what you pour may not go together.
log-other-way = See Cautions before you fill
log-reason = Why otherwise
log-notes = Notes
log-left-undone = Left undone on { $day }, { $machine }: { $tasks }. Do that before you fill.
log-left-undone-unticked = Left undone on { $day }, { $machine }: nobody ticked it off after the last fill. Look at the machine before you fill.
log-left-way = Tick it off at the end of shift
remark-log-more = You measured out { $measured }, more than the { $planned } that are planned. Record it if that is what went in.
remark-log-more-title = More than planned
remark-log-less = You measured out { $measured }, less than the { $planned } that are planned. Record it if that is what went in.
remark-log-less-title = Less than planned
remark-log-over-label = You measured out { $measured }. The label governs for this fill: no more than { $most }. Record what went in, and put the tank right before you clean with it.
remark-log-over-label-title = Too much: outside the label
remark-log-under-label = You measured out { $measured }. The label governs for this fill: no less than { $least }. Record what went in, and put the tank right before you clean with it.
remark-log-under-label-title = Too little: outside the label
remark-log-under-minimum = You measured out { $measured }. The minimum by law governs for this fill: no less than { $least }. Record what went in, and put the tank right before you clean with it.
remark-log-under-minimum-title = Too little: below the minimum
remark-log-over-standard = You measured out { $measured }. Your standard governs for this fill: no more than { $most }. Record what went in, and put the tank right before you clean with it.
remark-log-over-standard-title = Too much: outside your standard
remark-log-under-standard = You measured out { $measured }. Your standard governs for this fill: no less than { $least }. Record what went in, and put the tank right before you clean with it.
remark-log-under-standard-title = Too little: outside your standard
remark-log-over-machine = You measured out { $measured }. The machine’s limit governs for this fill: no more than { $most }. Record what went in, and put the tank right before you clean with it.
remark-log-over-machine-title = Too much: outside the machine’s limit
remark-log-under-machine = You measured out { $measured }. The machine’s limit governs for this fill: no less than { $least }. Record what went in, and put the tank right before you clean with it.
remark-log-under-machine-title = Too little: outside the machine’s limit
remark-log-over-tank = You write down { $level }. The tank of this machine holds { $tank }.
remark-log-over-tank-title = More than the tank holds
log-lack-reason = Say why you did it otherwise.
log-lack-why = Say why you correct it.
log-lack-product = Choose the product.
log-lack-scale = Choose what the reading tells.
log-lack-nothing = Write at least one amount, or a note.
log-lack-day = That is no day.
log-lack-time = Say at what time it was, such as 06:30.
log-lack-later = That time has not come yet.

## What the browser did not keep
log-not-kept = { $n ->
    [one] { $n } record is not kept yet
   *[other] { $n } records are not kept yet
 }
log-again = Try again
log-let-go = Let it go
log-waiting-save = Save as a file
log-denied = The browser keeps nothing for this page. A private window does that, and so does blocked storage. Save the record as a file, or open the page in a usual window.
log-full = The device has no room left for it. Save the record as a file, make room on the device, then try again.
log-newer = A newer version of the page keeps the log on this device. Load the page anew.
log-blocked = Another tab with an older version of the page holds the log. Close that tab, then try again.
log-unreadable = The browser cannot read the log that it keeps. Save what is shown here as a file, and open your last backup.
log-no-random = The browser gives no random numbers, so the record cannot be sealed. Save it as a file, or use another browser.
log-failed = The browser did not keep it: { $text }. Try again, or save it as a file.

## The view
log-heading = What was filled?
log-parts = Parts of the log
log-fills = Fills
log-shift = End of shift
log-questions = Questions
log-keep = Backup and care
log-opening = Opening the log.
log-opening-of = Opening the log: { $done } of { $of } fills.
log-shut = The log cannot be opened
log-shut-do = You can still record a fill: it stays on the screen until it is kept or saved as a file.
log-count = { $n ->
    [one] { $n } fill in the log. This device writes as { $device }.
   *[other] { $n } fills in the log. This device writes as { $device }.
 }
log-count-struck = { $n ->
    [one] { $n } of them was written down by mistake and counts nowhere.
   *[other] { $n } of them were written down by mistake and count nowhere.
 }
log-backup-last = { $n ->
    [one] Last backup { $when }; { $n } record came since.
   *[other] Last backup { $when }; { $n } records came since.
 }
remark-log-backup-none = { $n ->
    [one] There is no backup. If this device is lost, { $n } record is lost with it.
   *[other] There is no backup. If this device is lost, { $n } records are lost with it.
 }
remark-log-backup-none-title = Save a backup
remark-log-backup-old = { $n ->
    [one] The last backup is { $days } days old. If this device is lost, { $n } record is lost with it.
   *[other] The last backup is { $days } days old. If this device is lost, { $n } records are lost with it.
 }
remark-log-backup-old-title = Save a backup
log-save-now = Save a backup now
log-lost = Records are missing
log-lost-line = { $device }: number { $from } to { $to }
log-lost-do = They stood here once. The browser lost them. Open your last backup: what it has comes back.
log-clock-back = { $n ->
    [one] The clock of this device went back before { $n } record. Its time may be wrong; nothing is lost.
   *[other] The clock of this device went back before { $n } records. Their times may be wrong; nothing is lost.
 }
log-astray = { $n ->
    [one] { $n } correction names a fill that is not in this log. Open the backup that has the fill.
   *[other] { $n } corrections name fills that are not in this log. Open the backup that has the fills.
 }

## Which fills
log-seek = Which fills
seek-month = Month
seek-product = Product
seek-machine = Machine
seek-area = Area
seek-standard = Standard
seek-who = Who
seek-any = All
seek-all = Show all fills
log-shown = { $shown } of { $n } fills

## The table
log-table = Fills, the newest first
log-caption = { $n ->
    [one] { $n } fill, the newest first
   *[other] { $n } fills, the newest first
 }
log-keys = Use the arrow keys, Page up, Page down, Home and End to go from fill to fill. Press Enter to unfold one.
log-empty = No fill is recorded yet. Fill has a button for it below the amount.
log-none-found = No fill is like that. Choose less, or show all fills.
log-column-when = When
log-column-product = Product
log-column-planned = Planned
log-column-measured = Measured
log-column-machine = Machine
log-column-who = Who
log-struck = by mistake
log-contested = two of this number
log-corrected = corrected
log-title = Number { $number }, { $when }: { $product }, { $machine }
log-history = What was written, in order
log-past = { $kind }, { $number }, { $when }.
log-written-by = Written by { $who }.
log-kind-fill = Fill
log-kind-correction = Correction
log-kind-erasure = Erasure
log-kind-lesson = Practice
log-kind-unsaid = Record
log-part-by = Who wrote it
log-part-who = Who did it
log-part-reason = Why otherwise
log-part-notes = Notes
log-part-why = Why it is corrected
log-erased-parts = Erased
log-blanked = Erased on request
log-altered-text = Not what was written
log-nothing = Nothing
log-struck-field = Counts
log-is-struck = No: written down by mistake
log-not-struck = Yes
log-standard = Standard
log-standard-of = { $name }, version { $version }
log-product = Product
log-machine = Machine
log-floor = Floor
log-at = Done at
log-day = Day of the fill
log-time = Time of the fill
log-station = What you call this device
log-station-hint = Records that you write here say so, such as “Fill station, library”.
log-this-device = This device
log-done-by = Who did it
log-done-by-hint = Initials
log-concentrate = Concentrate as planned
log-water = Water as planned
log-level = Filled up to
log-end-of-shift = End of the shift
log-unknown-record = Not known
log-choose-product = Choose the product
log-as = The record says that { $who } did it.
log-new-day = It is a new day. Who are you?
log-still = I am still { $who }
log-other-person = Someone else
log-correct = Correct this record

## By hand, and corrections
log-by-hand = Write down a fill by hand
log-hand-heading = A fill by hand
log-hand-hint = Write what was really done. Leave day and time empty where it was just now.
log-hand-record = Record it
log-leave-form = Close without saving
log-correct-heading = Correct a record
log-correct-hint = The first record stays as it was. What you change here is written below it, with your initials and why. An emptied text stays as it was; only erasing takes one away.
log-why = Why you correct it
log-nothing-new = Nothing is changed yet.
log-correct-save = Save the correction
log-strike = Written down by mistake
log-unstrike = It counts after all
log-strike-hint = A fill that was written down by mistake stays in the log and is counted nowhere.

## End of the shift
log-left = Left undone, or not ticked off
log-left-line = { $machine }, { $day }: { $tasks }
log-left-line-unticked = { $machine }, { $day }: nobody ticked it off after the last fill
log-shift-today = Filled in the last 24 hours
log-shift-hint = Tick off each machine in this order. It is saved at once, with the last fill of the machine.
log-shift-none = No machine was filled in the last 24 hours.
log-shift-late = Earlier, not ticked off
log-shift-late-hint = These were filled in the last 7 days and something was left. Tick off what is done by now.
log-shift-machine = { $n ->
    [one] { $machine }: { $n } fill, at { $time }
   *[other] { $machine }: { $n } fills, the last at { $time }
 }
log-task-drain = Tanks drained
log-task-rinse = Tanks rinsed
log-task-filters = Filters cleaned
log-task-brush = Debris bag or brush cleaned
log-task-squeegee = Squeegee wiped
log-state-done = Done
log-state-not-done = Not done
log-state-not-asked = Not ticked

## Questions
log-by = Count by
log-by-product = Product
log-by-machine = Machine
log-by-area = Area
log-by-month = Month
log-by-who = Who
log-by-standard = Standard
log-unnamed = Not named
log-uncounted = { $n } of { $of } fills could not be counted here.
log-column-what = Of what
log-column-fills = Fills
log-column-used = Used
log-column-off = Over or under
log-column-share = In percent
log-column-otherwise = Otherwise, left undone, notes
log-column-compared-planned = Planned, of the measured
log-column-compared = Measured
log-column-uncounted = Not counted
log-column-number = Number
log-column-ratio = Measured of planned
log-column-range = From the one before
log-column-stands-out = Stands out
log-column-price = Price
log-column-cost = Cost
log-column-left = Left
log-column-daily = A day
log-column-lasts = Lasts
log-column-recipe = Recipe
log-column-readings = Readings
log-column-mean = Mean
log-column-week = Change a week
log-column-doubt = Doubt
log-column-says = What that says
log-column-task = Task
log-column-left-undone = Left undone
log-column-water = Water
ask-use = How much was used?
ask-use-picture = Concentrate used.
ask-use-legend = The bar is what was used; the line is what was planned.
ask-use-table = Use against the plan
remark-log-use-none = No fill has an amount that could be added up.
remark-log-use-planned = { $fills ->
    [one] { $used } by the plan, of { $fills } fill. Nobody measured, so this is what was planned, not what was poured.
   *[other] { $used } by the plan, of { $fills } fills. Nobody measured, so this is what was planned, not what was poured.
 }
remark-log-use-even = { $used } in { $fills } fills. The { $measured } that were measured took what was planned.
remark-log-use-over = { $used } in { $fills } fills. The { $measured } that were measured took { $off } more than planned: { $share } too much.
remark-log-use-under = { $used } in { $fills } fills. The { $measured } that were measured took { $off } less than planned: { $share } too little.
remark-log-assumed = { $n ->
    [one] { $n } fill was not measured and is counted as planned.
   *[other] { $n } fills were not measured and are counted as planned.
 }
remark-log-shared = { $n ->
    [one] { $n } time a fill was for several areas. Each of them is given all of it, so use by area is the most that it can be.
   *[other] { $n } times a fill was for several areas. Each of them is given all of it, so use by area is the most that it can be.
 }
ask-doses = Were doses as planned?
ask-doses-picture = Measured of planned, fill by fill, with its limits.
ask-doses-values = Measured of planned
ask-doses-ranges = Distance from the fill before
ask-doses-legend = Thin line: the mean. Broken lines: the limits. A ring with a number stands out; the table says why.
ask-doses-table = The fills on the chart
ask-constant = { $symbol } = { $value }
remark-log-doses-high = On average they got { $mean } of the plan: too much, fill after fill. That they scatter evenly does not make it right.
remark-log-doses-low = On average they got { $mean } of the plan: too little, fill after fill. That they scatter evenly does not make it right.
remark-log-doses-none = No fill has both a planned and a measured amount.
remark-log-doses = Of { $known } measured fills { $within } were within a tenth of the plan, { $over } above and { $under } below.
remark-log-chart-few = A chart needs { $fewest } measured fills; there are { $n }.
remark-log-chart-steady = Of the last { $n } none stands out: they scatter as usual.
remark-log-chart-out = Of the last { $n } fills { $out } stand out from the usual scatter. Ask what was different. { $run } in a row on one side of the mean stand out too.
remark-log-chart-pulled = Fills beyond the limits pull the mean towards them. Look at those first: correct what was written wrong.
remark-log-chart-estimate = These limits are an estimate: they come from { $n } values only.
control-beyond = Beyond the limits
control-jump = A jump from the fill before
control-run = Eight or more on one side of the mean
ask-cost = What did it cost?
ask-cost-picture = Cost by product.
ask-cost-table = Cost by product
remark-log-cost-none = No fill has both an amount and a price. Prices stand with the products on Site.
remark-log-cost = { $fills ->
    [one] The cost of { $fills } fill, at the prices of today. { $assumed } of them as planned, not measured.
   *[other] The cost of { $fills } fills, at the prices of today. { $assumed } of them as planned, not measured.
 }
remark-log-unpriced = No price is known for { $products }; it is not in the sum.
remark-log-water-free = No price of water is known; water is not in the sum.
ask-stock = How long does the stock last?
ask-stock-picture = Days until the shelf is empty.
ask-stock-legend = The bar is how long the stock lasts; the line is how long a delivery takes.
ask-stock-table = Stock by product
ask-days = { $n ->
    [one] { $n } day
   *[other] { $n } days
 }
stock-count = Containers of { $product } on the shelf
stock-day = Day that { $product } was counted
stock-no-day = Choose the day that you counted: today or before.
stock-no-container = The site does not say how much a container holds.
stock-not-counted = Not counted yet
remark-log-stock-none = Count the shelf and put the number here, to see how long it lasts.
remark-log-stock = { $days ->
    [one] { $product } runs out first, in about { $days } day. That is an estimate, at { $daily } a day: the mean of the last 90 days, or since the first fill in them.
   *[other] { $product } runs out first, in about { $days } days. That is an estimate, at { $daily } a day: the mean of the last 90 days, or since the first fill in them.
 }
remark-log-stock-late = { $product } runs out before a delivery ordered today would come. Order now.
log-no-use = No use is known yet
log-products = More than one product
ask-drift = Do readings wander?
ask-drift-picture = { $n } readings of { $product } with their line and its doubt.
ask-drift-legend = Broken line: how the readings change. Band: what the slope may be.
ask-drift-table = Readings by recipe
ask-drift-few = Too few: { $n } at several times are needed
ask-drift-no = No clear change
ask-drift-rises = Rises
ask-drift-falls = Falls
remark-log-drift-few = { $fewest } readings of one recipe are needed, at several times, to see a change.
remark-log-drift-steady = { $product }: { $n } readings with a mean of { $mean } show no clear change. A week changes them by { $week }, give or take { $doubt }.
remark-log-drift-rises = { $product }: { $n } readings with a mean of { $mean } rise by { $week } a week, give or take { $doubt }.
remark-log-drift-falls = { $product }: { $n } readings with a mean of { $mean } fall by { $week } a week, give or take { $doubt }.
log-too-few-readings = Too few readings
log-mixed-readings = Readings of more than one recipe
ask-undone = What was left undone?
ask-undone-picture = How often each task was left undone.
ask-undone-times = { $n ->
    [one] { $n } time
   *[other] { $n } times
 }
ask-undone-table = Tasks at the end of the shift
ask-undone-shifts = Shifts with something undone, the newest first
ask-undone-unticked = Shifts that nobody ticked off, the newest first
ask-undone-more = { $n } earlier ones are not listed.
remark-log-undone-unasked = No shift was ticked off. Shifts that nobody ticked off: { $unticked }.
remark-log-undone-none = { $n ->
    [one] In { $n } shift that was ticked off nothing was left undone. Shifts that nobody ticked off: { $unticked }.
   *[other] In { $n } shifts that were ticked off nothing was left undone. Shifts that nobody ticked off: { $unticked }.
 }
remark-log-undone-part = Shifts that were ticked off: { $n }. Ticked off in part: { $missed }. Shifts that nobody ticked off: { $unticked }.
remark-log-undone = Shifts that were ticked off: { $n }. With something undone: { $missed }. Most often not done: { $task }, { $times } of { $n }. Shifts that nobody ticked off: { $unticked }.
figure-log-used = Concentrate used
figure-log-planned = Planned, of the measured fills
figure-log-measured = Measured, of the same fills
figure-log-centre = Mean
figure-log-lower = Lower limit
figure-log-upper = Upper limit
figure-log-range = Mean distance
figure-log-range-upper = Limit of a distance
figure-log-cost = Cost
figure-log-cost-concentrate = Concentrate
figure-log-cost-water = Water
formula-log-share = Measured of planned, of the fills that have both.
formula-log-cost = Concentrate and water at their prices.
formula-log-supply = The stock over the mean use of a day.
formula-log-drift = The slope of the straight line through the readings, for a week.
formula-control-upper = Three standard deviations above the mean, from the mean distance.
formula-control-lower = Three below it, and no less than nothing.
formula-control-range = The most that a distance usually is.

## Out and in
log-out = Save the log
log-out-hint = A backup has every record with its hash. It opens on any device, as often as you like: nothing comes twice.
log-save = Save a backup
log-csv = Save a table
log-csv-hint = The table is for reading in a spreadsheet. It does not come back: only a backup does.
log-in = Open a backup
log-open = Open a file
log-open-hint = You first see what it would bring. Nothing is taken until you say so.
log-file-too-big = The file is larger than any log. It was not read.
log-reading-file = Reading the file.
log-busy-opening = Reading the fills: { $done } of { $of }.
log-busy-reading = Reading the file: { $done } of { $of }.
log-busy-comparing = Comparing: { $done } of { $of }.
log-busy-writing = Writing: { $done } of { $of }.
log-busy-saving = Making the file: { $done } of { $of }.
log-refused = The file is refused. Nothing was taken.
log-compared = { $records ->
    [one] { $records } record in the file: { $added } new, { $known } known.
   *[other] { $records } records in the file: { $added } new, { $known } known.
 }
log-file-broken = The file is not whole.
log-file-erases = { $n ->
    [one] { $n } text of yours was erased there on request. It is erased here as well when you take the file.
   *[other] { $n } texts of yours were erased there on request. They are erased here as well when you take the file.
 }
log-flaws = { $n ->
    [one] { $n } line is no record and is left out:
   *[other] { $n } lines are no records and are left out:
 }
log-line = Line { $line }:
log-conflicts = { $n ->
    [one] { $n } number has two records that say different things. Both are kept and shown.
   *[other] { $n } numbers have two records that say different things. Both are kept and shown.
 }
log-stock-all = All fills count here, whatever is chosen above: every machine draws on the same shelf.
log-erase-texts = Erase its words
log-file-altered = Here or in the file, these were changed after they were written: { $records }. The one that is as it was written stands, and the changed one is not taken.
log-measured-told = measured { $text }
log-conflict-table = Two records of one number
log-column-record = Record
log-column-one = One says
log-column-other = The other says
log-take = Take the new records
log-take-broken = Take it all the same
log-leave = Leave it
log-left-out = Nothing was taken.
log-taken-mended = No record is new. What differed was put right from the file.
log-taken = { $n ->
    [one] { $n } record was taken.
   *[other] { $n } records were taken.
 }
log-locked = Opening a file and erasing are left to a device that is free. Set this one free on Site first.
log-chain = Is the log whole?
log-chain-hint = Each record carries a hash of the one before it. Checking finds a record that was changed, left out or moved.
log-check = Check all records
log-check-not-yet = Not checked since the page was opened.
log-check-running = Checking: { $done } of { $of }.
log-check-whole = { $n ->
    [one] Whole: { $n } record holds.
   *[other] Whole: all { $n } records hold.
 }
log-broken = The chain breaks at record { $id }.
log-broken-file-do = Its records after that place may be changed or missing. Ask whoever saved it for a whole copy before you take it.
log-broken-do = Do not erase anything. Save a backup as it is, tell your supervisor, and open an earlier backup beside it.
log-altered = The record is not what was written.
log-words-altered = This text is not what was written: { $part }.
log-words-gone = This text is gone, and nothing says that it was erased: { $part }.
log-missing = The record is missing, and later ones are there.
log-doubled = The record is there twice.
log-forked = Another record has the same number.
log-moved = The record stands in the wrong place.
log-unlinked = It does not fit the record before it.
log-replaced = It was the last record once, and was another one.
log-heads = The end of each chain
log-heads-hint = Write these down or print them: they show later whether records at the end are gone, or all was written anew.
log-room = Room on this device
log-room-used = The browser uses { $used } of { $allowed } for this page.
log-room-unknown = The browser does not say how much room there is.
log-room-kept = The browser keeps it until you remove it.
log-room-loose = The browser may remove it when the device gets full.
log-room-refused = The browser did not agree. It may still remove the log when the device gets full, so save backups.
log-persist = Ask the browser to keep it
log-records = { $n ->
    [one] { $n } record.
   *[other] { $n } records.
 }
log-erasing = Erase initials
log-erasing-hint = Somebody may ask that their initials go. The fills stay, and the chain still holds.
log-erase = Initials to erase
log-erase-look = See how many there are
log-erase-looking = Looking.
log-erase-none = No record names { $who }.
log-erase-found = { $n ->
    [one] { $n } record names { $who }.
   *[other] { $n } records name { $who }.
 }
log-erase-class = { $n ->
    [one] { $n } class result on this device has these initials and goes too.
   *[other] { $n } class results on this device have these initials and go too.
 }
log-erase-class-done = The class results are off this device.
log-erase-warning = Erasing cannot be undone. It does not reach backups that were saved before, nor other devices until they open a new backup. Notes of others may name somebody as well: unfold such a fill in the list, and erase its words there.
log-erase-do = Erase them for good
log-erase-leave = Keep them
log-erase-doing = { $n ->
    [one] { $n } record is being erased from.
   *[other] { $n } records are being erased from.
 }
log-erase-done = { $n ->
    [one] Erased from { $n } record.
   *[other] Erased from { $n } records.
 }
log-honest = The log finds slips and edits. It does not keep out somebody who can clear this browser, or who writes a whole new log; the ends of the chains, kept elsewhere, show that too.
log-long-line = The record is { $text } bytes, too long for a line. Make the notes shorter.
log-cut-off = The file ends before this record does.
log-device = “{ $text }” is no id of a device.
log-number = { $text } is no number of a record.
log-when = “{ $text }” is no time of day with its offset.
log-hash = “{ $text }” is no hash.
log-kind = The record does not say what it is.
log-stray = “{ $text }” has no place in a record of this kind.
log-lesson = “{ $text }” of the practice session cannot be so.
log-nobody = A practice session that nobody took part in.
log-of = “{ $text }” names no record.
log-unknown = There is no record { $text }.
log-not-a-fill = Record { $text } is no fill; only fills are corrected.
log-nothing-changed = The correction changes nothing.
log-nothing-to-erase = Record { $text } has nothing to erase.

## On paper
log-print-hint = Choose a month to print its log.
log-paper = The log of this month on paper
log-print = Print this log
log-paper-title = Log of { $month }
log-paper-part = Part of the log only:
log-paper-table = Fills of the month
log-paper-corrected = Corrected { $when } by { $who }: { $why }
log-paper-struck = Struck { $when } by { $who }: { $why }
log-paper-unstruck = Counted again { $when } by { $who }: { $why }
log-paper-nobody = nobody named
log-paper-no-why = no reason given
log-paper-totals = Totals by product
log-assumed-in = { $n ->
    [one] { $n } fill in the totals was not measured and is counted as planned.
   *[other] { $n } fills in the totals were not measured and are counted as planned.
 }
