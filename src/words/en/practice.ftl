### Practice: what exercises ask, what comes of an answer. In the later chunk.

## Topics and levels

practice-topic-label = Read a label
practice-topic-units = Change units
practice-topic-dose = Dose a fill
practice-topic-top-up = Top up a tank
practice-topic-setting = Choose a flow setting
practice-topic-shift = Plan a small shift
practice-topic-mistake = Spot the mistake
practice-topic-rescue = Fix a tank that is too strong
practice-topic-ppe = Choose what to wear
practice-topic-pairs = What must never meet
practice-topic-foam = Foam
practice-level-first = Level 1
practice-level-first-is = One step and easy numbers. The label is explained.
practice-level-second = Level 2
practice-level-second-is = The label as printed, part fills and mixed units.
practice-level-third = Level 3
practice-level-third-is = A range to choose from. Limits of the machine. A rest in the tank. Imperial units.

## What is missing for a topic

practice-lack-machine = Add a machine with its tank first.
practice-lack-label = Add a product with a label that can be read first.
practice-lack-liquid = Add a liquid product with a label that can be read first.
practice-lack-measure = Add a jug, cup, cap or pump with its step first.
practice-lack-settings = Add a machine with its path, its speed and two flow settings first.
practice-lack-floor = Add a floor and how much solution it should get first.
practice-lack-hazards = Add a product with the hazard codes from its label first.
practice-lack-nothing-fits = These tanks, labels and measures do not go together. Try a finer measure.

## The parts of a task

practice-label = The label of { $product } says “{ $label }”.
practice-measure-us = Its oz and gal are US units.
practice-measure-imperial = Its oz and gal are imperial units.
practice-aim-low = Use the least that the label allows.
practice-aim-high = Use the most that the label allows.
practice-means-plus-water = It means 1 part product and that many parts of water.
practice-means-of-total = It means 1 part product in that many parts of mix in all.
practice-means-per-water = It means so much product added to that much water.
practice-means-made-up = It means so much product in that much of the whole mix.
practice-means-percent = It means parts of product in 100 parts of the whole mix.
practice-means-per-tank = It means so much product for a full tank.
practice-means-powder = It means a weight of powder for that much mix.
practice-means-active = It means parts of active substance in a million parts of mix.
practice-means-packets = It means whole packets or tablets for that much mix.
practice-tank = The tank of { $machine } holds { $tank }.
practice-machine = The machine is { $machine }.
practice-machine-least = The machine needs at least { $amount } of product in a full tank.
practice-machine-most = The machine takes at most { $amount } of product in a full tank.
practice-standard = The rule of your site says “{ $rule }”.
practice-fill-full = You fill it to the top. Water and product make a full tank.
practice-fill-part = You fill it to { $fill }. Water and product reach that mark.
practice-fill-on-top = You put in { $fill } of water. The product goes on top of that.
practice-jug = You measure with this: { $measure }. One step is { $step }.
practice-tested = You did the shake test. It does not foam.
practice-rest-same = There is still { $left } of the same mix in it. It has the right strength.
practice-rest-other = There is still { $left } of the same product in it. That was mixed with { $parts } parts of water to 1 part product.
practice-top-up-full = You fill it up to the top.
practice-top-up-part = You fill it up to { $fill }.
practice-found = There is { $found } of mix in it, and { $poured } of that is product. This is too strong.
practice-floor = This floor should get { $low } to { $high }: { $floor }.
practice-speed = It moves at { $speed }.
practice-path = It cleans a path { $path } wide.
practice-path-overlap = It cleans a path { $path } wide. Passes overlap by { $overlap }.
practice-area = You clean { $area } of this floor: { $floor }. You lay down { $rate }.
practice-area-plain = You clean { $area } and lay down { $rate }.
practice-reuse = The machine uses { $reuse } of its mix again.
practice-ppe = You pour { $product }. Signal word on the label: { $signal }.
practice-ppe-says = The label says: { $statement }.
practice-ppe-codes = The codes on the label are { $codes }.
practice-ppe-no-codes = There are no hazard codes on its card.
practice-ppe-nothing = Nothing: the label asks for none
practice-pair = { $a } with { $b }
practice-foam-product = How { $product } foams: { $class }.
practice-foam-any-product = You have a new product. How it foams: { $class }.
practice-foam-vacuum = { $machine } picks up with a vacuum.
practice-foam-no-vacuum = { $machine } has no vacuum.
practice-foam-any-machine = Your machine picks up with a vacuum.
practice-foam-shaken = You do the shake test. At once the foam is { $first } high. After one minute it is { $later } high.
practice-foam-happens = You use { $product }. The tank foams over.
practice-foam-happens-any = The tank foams over.
practice-setting-rate = Setting { $n }: lays down { $amount }
practice-setting-flow = Setting { $n }: { $amount }
practice-setting-none = None of them
practice-ticket-water-first = A fill ticket says: water went in first.
practice-ticket-product-first = A fill ticket says: product went in first.
practice-ticket-poured = Product poured: { $poured }.
practice-ticket-nothing = Nothing went wrong
practice-ticket-is-right = The ticket is right.
practice-ticket-is-wrong = The ticket has a mistake.

## What is asked

practice-ask-convention = What does the label mean?
practice-ask-parts = How many parts does the whole mix have?
practice-ask-percent = What percent of the mix is product? Give three digits.
practice-ask-units = How many { $unit } are { $amount }? Give three digits.
practice-ask-dose = How much product do you pour in? Half a step more or less will do.
practice-ask-top-up = How much product do you add? Half a step more or less will do.
practice-ask-setting = Which is the lowest setting that gives the floor enough, and not too much?
practice-ask-solution = How much mix do you need? Give three digits.
practice-ask-fills = How many times do you fill the tank?
practice-ask-product = How much product do you need for both areas? Give three digits.
practice-ask-mistake = What went wrong?
practice-ask-rescue-water = How much water do you add to make it right? Give three digits.
practice-ask-rescue-drain = There is no room for all the water it needs. How much do you drain first, so that a full tank is right? Give three digits.
practice-ask-ppe = What do you need? Choose all that apply.
practice-ask-pair = Which two must never meet?
practice-ask-pairs = Which of these do you keep apart? Choose all that must never meet, and all where one is not known.
practice-ask-foam = What do you do?
practice-ask-foam-class = What kind of product is it?
practice-ask-foam-order = What do you do, and in what order?

## What came of it

practice-answer = Your answer
practice-choose = Choose an answer first.
practice-above-nothing = Your answer must be more than nothing. Type a number above zero.
practice-no-try = This was no try.
practice-as-given = That is the amount as it was given. Say it in { $unit }.
practice-answer-poured = { $n ->
    [one] { $exact }; with your measure { $poured }, { $n } step
   *[other] { $exact }; with your measure { $poured }, { $n } steps
 }
practice-right = Right.
practice-rounded = Right for your measure. To three digits it is { $exact }.
practice-wrong = Not yet. Read the task again.
practice-step = { $what }: { $symbol } = { $equation }. With { $given }, { $symbol } = { $result }.
practice-so = The answer is { $answer }.
practice-because-units = { $one } is { $many }.
practice-because-standard = The rule of your site stays within the label. It decides.
practice-because-setting = Work out what each setting lays down. Take the lowest one that reaches the least the floor should get.
practice-because-rescue = The product stays the same. Only the water grows. Wait until it is mixed, then read the strength again.
practice-because-wear = { $piece }. The label says { $code }: “{ $statement }”
practice-because-wear-unknown = { $piece }. Not all of the label is known, so the worse case asks for it.
practice-because-nothing = Someone read the label and found no hazard. Wear what your site asks all the same.
practice-because-other-step = The nearest step is more or less than the rules allow. Take the next one.
practice-because-no-vacuum = There is no vacuum that could pull foam in.
practice-because-little-foam = So little foam does not get up to the vacuum.
practice-because-unknown = Not all of the label is known. What is not known counts as the worse case.

## Wrong roads, and what to do instead

practice-way-parts-for-total = Close. You read the label as parts of the whole mix. It counts the parts of water. Add 1 for the product.
practice-way-total-for-parts = Close. You read the label as parts of water. It counts the whole mix. The product is one of these parts.
practice-way-water-for-mix = Close. You took the water for the whole mix. The product comes on top of the water.
practice-way-mix-for-water = Close. You took the whole mix for water. Part of it is product.
practice-way-other-reading = That is another way to write it. Look at the words and signs on the label again.
practice-way-full-for-part = That is for a full tank. You fill only a part of it. Take the same part of the product.
practice-way-full-for-rest = That is for a whole fill. The rest in the tank has product in it. Take that off.
practice-way-ounces-for-millilitres = You wrote ounces as mL. Look at the unit of your measure. One US fl oz is about 30 mL.
practice-way-millilitres-for-ounces = You wrote mL as ounces. Look at the unit of your measure. One US fl oz is about 30 mL.
practice-way-us-for-imperial = You used US units. These are imperial. An imperial gallon is a fifth more than a US gallon.
practice-way-imperial-for-us = You used imperial units. These are US ones. A US gallon is a sixth less than an imperial gallon.
practice-way-weight-for-volume = An ounce of weight is not a fluid ounce. Use the fluid ounce for liquids.
practice-way-upside-down = You went the wrong way. Turn it around: divide where you multiplied.
practice-way-decimal-slip = The point slipped by one place. Count the zeros again.
practice-way-other-end = That is the other end of the range. Look at which end the task asks for.
practice-way-machine-ignored = The machine has a limit of its own. Hold your number against it.
practice-way-standard-ignored = Your site has a rule for this. Hold your number against it.
practice-way-rest-ignored = The rest has another strength. Work out how much product is in it and take that off.
practice-way-end-for-added = That is what you have in the end. The task asks for what you add or drain.
practice-way-same-again = You took as much again. That is right only when the mix is twice too strong.
practice-way-room-ignored = That is the water that does not fit. Part of the strong mix must go, and product goes with it.
practice-way-thousand = The rate is for a thousand. Divide by 1,000.
practice-way-rounded-down = The last part of a tank is a fill too. Round up.
practice-way-not-whole = You fill whole times. Round up to the next whole number.
practice-way-reuse-ignored = The machine uses part of its mix again. Only the rest is spent.
practice-way-one-area-only = That is for one area. Add the other one.
practice-way-mix-for-product = That is all of the mix. Only a small part of it is product.
practice-way-product-first = Water goes in first, then product. It splashes less and foams less.
practice-way-too-dry = That is too little. Dirt stays on the floor. Go higher.
practice-way-too-wet = That is too much. The floor stays wet and slick. Go lower.
practice-way-more-than-needed = That would do, but a lower one does too. Take the lower one.
practice-way-none-thought = One of them fits. Work out what each one lays down.
practice-way-overlooked = There is a mistake. Work out the dose and hold it against the ticket.
practice-way-false-alarm = The ticket is right. Work out the dose and hold it against the ticket.
practice-way-other-mistake = It is another mistake. Work out the dose, then see which slip leads to the number on the ticket.
practice-way-no-eyes = Your eyes are bare. Look at what the label says of eyes.
practice-way-no-skin = Your skin is bare. Look at what the label says of skin.
practice-way-no-air = Think of the air that you breathe. Look at what the label says of it.
practice-way-more-than-asked = That is more than the label calls for. Your site may still ask for it.
practice-way-pair-missed = Look again. You left out a pair that must never meet.
practice-way-unknown-cleared = Nobody knows what is in one of them. What is not known is kept apart.
practice-way-pair-not-listed = No clash is known for that pair. Still, never mix on purpose.
practice-way-foam-let-in = It foams. It must not go into a machine with a vacuum.
practice-way-not-tested = Nobody has tested it. Until then it counts as one that foams.
practice-way-kept-out = That is not what the facts say. Look at how high the foam is, how fast it falls, and if there is a vacuum.
practice-way-not-stopped = Stop the machine first. All else can wait.
practice-way-order-mixed = The first step is right. Look at the order of the others.
practice-way-as-given = That is the amount as it was given. Say it in the unit that the task asks for.
practice-way-round-factor = You took a round number for the unit, such as 30 mL for an ounce. That will do for a guess. Here three digits count.

## What a wrong answer could do

practice-harm-over-label = This is more than the label allows. Too strong can burn skin, hurt the floor and leave a slick film.
practice-harm-forbidden-pair = At work this could hurt people. These two must not meet.
practice-harm-no-eyes = At work this could cost your sight. One splash is enough.
practice-harm-no-skin = At work this could burn your skin.
practice-harm-no-air = At work this could hurt your lungs.
practice-harm-foam = At work the foam could reach the motor of the vacuum and stop the machine.
practice-harm-splash = At work the strong product could splash up at you.

## Mistakes on a fill ticket

practice-made-parts-for-total = The parts of water were taken as parts of the whole mix
practice-made-total-for-parts = The parts of the whole mix were taken as parts of water
practice-made-water-for-mix = The water was taken for the whole mix
practice-made-mix-for-water = The whole mix was taken for water
practice-made-full-for-part = The dose is for a full tank
practice-made-ounces-for-millilitres = Ounces were written as mL
practice-made-millilitres-for-ounces = mL were written as ounces
practice-made-us-for-imperial = US gallons were used for imperial ones
practice-made-imperial-for-us = Imperial gallons were used for US ones
practice-made-other-end = The wrong end of the range was used
practice-made-machine-ignored = The limit of the machine was passed over
practice-made-standard-ignored = The rule of the site was passed over
practice-made-product-first = Product went in before water

## Sessions and their codes

practice-session-no-topic = Choose a topic first.
practice-session-count = That number of tasks does not fit. Choose fewer.
practice-session-lacks = One topic cannot be made from your records. Take it out or add what it needs.
practice-session-fewer = There are not that many different tasks. Choose fewer, or more topics.
practice-session-link = The session does not fit in a code. Choose fewer topics, or hand it out on paper.
practice-code-altered = This code is not as it was made. Check each letter.
practice-code-later = This code comes from a newer version. Update the page.
practice-code-initials = Type your initials, four letters at most.
practice-code-day = Type the day as year-month-day.
practice-code-session = This result belongs to no session.
practice-code-marks = There is nothing to hand in yet.
practice-class-other = This result is not from this session.
practice-class-twice = This result is in the list.
practice-class-ahead = Its day is later than the day on this device. Check the clocks of both.
practice-class-erased = The log has a result like it, and the initials were erased on request. Take it only if this person wants that. It is a new record then.

## The page

practice-heading = What would you do?
practice-about = Tasks from your own machines, products and floors. Nothing that you do here changes your site or your log.
practice-governs = This is practice. At work the label, its SDS, the rules of your site and trained people decide.
practice-parts = What to do here
practice-practise = Practise
practice-numbers = See the numbers
practice-hand-out = Hand out
practice-class = Class results
practice-choose-heading = Choose what to practise
practice-topics = Topics
practice-topics-all = Choose all topics
practice-topics-none = Choose no topic
practice-level = Level
practice-count = How many tasks
practice-count-hint = At most { $most }.
practice-seed = Class number
practice-seed-hint = The same number gives the same tasks on each device with the same records. Leave it empty for new ones.
practice-session-seed = A class number has digits only and is at most 4,294,967,295.
practice-begin = Begin
practice-stock = Made from
practice-made-of = { $site }: machines { $machines }, products { $products }, floors { $floors }, measures { $measures }
practice-check-is = session { $check }
practice-tasks = { $n ->
    [one] { $n } task
   *[other] { $n } tasks
 }
practice-progress = { $n } of { $of }
practice-check = Check
practice-next = Next
practice-end = See your result
practice-skip = Leave this one
practice-wrong-last = That is not it. Look at how it is worked out.
practice-once-more = You have one more try.
practice-right-is = The answer is: { $answer }
practice-from = These records are from { $site }.
practice-stop = Stop this session
practice-stop-hint = What you did in it goes. To come back later just leave the page: it waits for you.
practice-leave = Stop and let it go
practice-order-hint = Put these in order. The first step comes first.
practice-up = Up
practice-down = Down
practice-up-of = Up: { $what }
practice-down-of = Down: { $what }
practice-drawing = A cup with { $dose } of product, one step is { $step }. Beside it a tank of { $tank } filled to { $total }. The layer at the bottom of the tank is the product, 1 part to { $ratio } parts of water.
practice-drawing-cup = Product
practice-picture-ratio = This is 1 to { $ratio }. The layer at the bottom of the tank is all the product in it.
practice-picture-half = One step of your cup is { $step }. Half a step less gives 1 to { $less }. Half a step more gives 1 to { $more }.

## See the numbers

numbers-about = Change a number and see what it does. It changes nothing else.
numbers-mix = A ratio in a tank
numbers-machine = Tank of
numbers-own = My own number
numbers-tank = The tank holds
numbers-level = How full it is
numbers-parts = Ratio
numbers-parts-hint = Parts of water to 1 part of product. Type 64 or 1:64.
numbers-usual = Usual ratios
numbers-slider = Slide the ratio:
numbers-ratio = 1 to { $n }
numbers-measure = Measure
numbers-step = One step of the cup
numbers-none = There is no picture yet. Fix the number that is marked above.
numbers-to-scale = To one scale: the tank and the product, each as a cube from the front. The thin layer at the bottom of the tank is the same product.
numbers-enlarged = The cup again, large, with its steps. The band is half a step up and down.
numbers-count = { $n ->
    [one] The nearest step is { $n } step of { $step }, which is { $rounded }. That makes 1 to { $ratio }.
   *[other] The nearest step is { $n } steps of { $step }, which is { $rounded }. That makes 1 to { $ratio }.
 }
numbers-half = What half a step does
numbers-less = Half a step less
numbers-asked = As asked for
numbers-nearest = The nearest step
numbers-more = Half a step more
numbers-column-pour = You pour
numbers-column-product = Product
numbers-column-ratio = Ratio
numbers-column-off = Off by
numbers-drawing-scale = A tank of { $tank } as a cube { $tank_edge } wide, filled to { $total }. Beside it the { $dose } of product in it as a cube { $dose_edge } wide. Both are drawn to one scale.
remark-numbers-coarse = Half a step of this cup is as much as all the product. Choose a finer measure or a fuller tank.
numbers-film = The film on a floor
numbers-laid = How you set it
numbers-laid-rate = I know how much I lay down
numbers-laid-setting = By a flow setting
numbers-rate = What you lay down
numbers-setting = Setting of
numbers-setting-of = { $machine }, setting { $n }
numbers-flow = Flow
numbers-speed = Speed
numbers-path = Path width
numbers-overlap = Overlap
numbers-film-scale = A tile from the side, and a sheet of paper beside it. Up is drawn { $times } times as large as across.
numbers-film-assumed = This is the film as it is laid down, even all over. A real floor has more in its joints and low spots. A sheet of office paper is taken as 0.1 mm thick and a tile as 12 in or 30 cm wide: common practice, no source. The weight is that of water at 20 °C, 998 g a liter.
numbers-tile-is = tile { $edge } wide
numbers-paper = paper
numbers-drawing-film = A tile { $edge } wide from the side with a film { $thick } thick on it. Beside it a sheet of paper { $paper } thick. Up is drawn { $times } times as large as across.
figure-numbers-total = Mix in the tank
figure-numbers-water = Water in it
figure-numbers-dose = Product in it
figure-numbers-tank-edge = Edge of the tank as a cube
figure-numbers-dose-edge = Edge of the product as a cube
figure-numbers-rate = Laid down
figure-numbers-thickness = How thick it lies
figure-numbers-weight = What it weighs
figure-numbers-tile = On one tile
figure-numbers-sheets = Sheets of paper as thick
formula-film-mass = Weight w of the film on each area, from what is laid down and the density ρ of water

practice-picture-tanks = The layer at the bottom is all the product in the tank. Where you see none, it is thinner than a line.
practice-picture-rates = A bar for each setting, by its number. The right one is the lowest that ends in the band. None is right when no bar does.
practice-picture-mix = All the mix for the area, as one strip.
practice-picture-strip = The mix from the first to the last. A line with a number stands where you fill the tank.
practice-picture-range = What the label allows, from none to more. A dashed line is what the task asks for.
practice-picture-range-parts = That is 1 part product and { $n } parts water, { $all } parts in all.
practice-picture-scales = Both sides show the same amount.
practice-picture-wear = What the label warns of, and what you wear against it.
practice-picture-shaken = Low foam is at or below the dashed line after a minute, and has fallen to a third or less. Common practice, no source.
practice-picture-foam = Foam must not get into a vacuum. Test what nobody has tested.
practice-state-before = before
practice-state-topped = topped up
practice-state-found = as found
practice-state-drained = drained
practice-state-rescued = put right
practice-drawing-state = { $when }: { $mix } with { $product } of product in it
practice-drawing-tanks = A tank of { $tank }, step by step. { $states }.
practice-drawing-mix = A strip of { $total } of mix for one area.
practice-drawing-strip = { $n ->
    [one] A strip of { $total } of mix, by area: { $areas }. It takes { $n } fill of the tank.
   *[other] A strip of { $total } of mix, by area: { $areas }. It takes { $n } fills of the tank.
 }
practice-drawing-range = A bar of what the label allows: { $range }.
practice-drawing-range-asked = A bar of what the label allows: { $range }. The task asks for { $asked }.
practice-drawing-scales = One line with two scales: { $from } above is { $to } below.
practice-drawing-bottles = Two bottles with a bar between them: { $a } and { $b }.
practice-drawing-shaken = Two bottles after shaking. At once the foam is { $first } high, after a minute { $later }. A dashed line stands at { $limit }.
practice-drawing-foam-none = A tank without foam.
practice-drawing-foam-no-vacuum = A tank that can foam, and no vacuum above it.
practice-drawing-foam-unknown = A tank that may foam. The hose above it leads to the motor of the vacuum.
practice-drawing-foam-vacuum = A tank full of foam. The foam goes up the hose to the motor of the vacuum.
practice-foam-at-once = at once
practice-foam-after = after 1 min
practice-foam-motor = motor
practice-foam-tank = tank
practice-ticket-should = This should read: { $line }

## The result

practice-result = Your result
practice-tries-first = Right at once: { $n } of { $of }
practice-tries-second = Right at the second try: { $n } of { $of }
practice-tries-later = Right later: { $n } of { $of }
practice-tries-never = Not right: { $n } of { $of }
practice-tries-open = Left out: { $n } of { $of }
practice-roads = What to look at again
practice-hand-in = Hand it in
practice-initials = Your initials
practice-initials-hint = Only if you hand your result in. Four letters at most, no full name.
practice-code = Your code
practice-code-qr = Code of your result, to scan
practice-code-save = Save the code as a file
practice-code-holds = The code holds your initials, the day ({ $date }) and what came of each task. Nothing is sent. Show it or pass it on yourself.
practice-finish = Done. Choose new tasks
practice-copy = Copy
practice-copied = Copied.
practice-marked = It is marked. Copy it with your keyboard.

## A session that a link brings

practice-offer = A session for you
practice-offer-hint = This link brings a session. Begin it or leave it first: then the rest of Practice is here again. Your own site stays as it is.
practice-offer-same = You have begun this session. You can go on with it.
practice-offer-other = You have another session under way. If you begin this one, the other goes.
practice-offer-go-on = Go on where you were
practice-offer-begin = Begin this session
practice-offer-leave = Leave it
practice-link-content = It opens, but what it holds is not a session.

## Handing out

practice-hand-out-heading = Hand a session out
practice-hand-out-hint = Choose topics, then make the session. Everyone who scans its code gets the same tasks, without a network.
practice-make = Hand this session out
practice-given-heading = The session
practice-given = Which session
practice-given-one = Class number { $seed }, { $level }, tasks: { $n } ({ $check })
practice-smaller = A code has no room for all records. This session uses the first of each list.
practice-qr = Code to scan with a phone: it opens this session
practice-scan = Scan to open this session. Open the page once on each device before, so that it works without a network.
practice-link = The link
practice-paper = The session on paper
practice-tasks-print = Print the tasks
practice-key-print = Print the answer key
practice-both-print = Print both
practice-paper-tasks = Tasks, class number { $seed }, session { $check }
practice-paper-key = Answer key, class number { $seed }, session { $check }
practice-paper-key-of = { $n ->
    [one] The answer to { $n } task. What rounds to it for the measure is right too.
   *[other] The answers to { $n } tasks. What rounds to it for the measure is right too.
 }
practice-paper-initials = Initials
practice-paper-date = Date
practice-paper-order = Write 1, 2, 3 and so on into the boxes.

## What a class did

class-heading = Take the codes of your class
class-codes = Codes, one a line
class-codes-hint = Paste what your people sent you or scanned for you.
class-take = Take these codes
class-take-sure = Take what was asked about all the same
class-open = Or open a file of codes
class-open-hint = A text file with one code a line.
class-no-session = There is no session yet. Hand one out first: its results belong to it.
class-taken = { $n ->
    [one] { $n } code was taken.
   *[other] { $n } codes were taken.
 }
class-refused = { $n ->
    [one] { $n } line was not taken:
   *[other] { $n } lines were not taken:
 }
class-summary = What the class did
class-none = There are no results of this session yet.
class-by-topic = By topic
class-by-person = { $n ->
    [one] By person: { $n } person. The latest result counts.
   *[other] By person: { $n } people. The latest result counts.
 }
class-roads = The usual wrong roads
class-no-roads = Nobody took one of the usual wrong roads.
class-column-topic = Topic
class-column-asked = Answers
class-column-first = At once
class-column-second = Second try
class-column-right = Right
class-column-share = Share right
class-column-who = Initials
class-column-date = Date
class-column-wrong = Not right
class-column-open = Left out
class-column-times = Times
class-column-way = What to teach
class-column-level = Level
class-column-until = Holds until
class-shown = Who has shown what
class-shown-hint = A topic counts when all its tasks were right, at the first or second try, in the latest session that asked for it. That is a habit of trainers, not a rule with a source. It is no licence: you say who may work alone. People are told apart by their initials alone.
class-months = How many months it holds
class-months-wrong = Until then no end is shown.
class-until-unknown = Not known
class-lost = Lost on { $day } by a wrong answer
class-ran-out = Ran out. Its last day was { $day }
class-shown-by = Shown by { $who }
class-shown-nothing = { $who } has shown no whole topic yet.
class-remove-warning = In the log are { $n } results of { $who }. The initials are erased from them for good; what was shown stays and is nobody’s.
class-remove-do = Erase and take off
class-remove-leave = Leave all as it is
class-logged = In the log: { $n }. Not in the log yet: { $new }.
class-log = Write these results into the log
class-log-hint = In the log a result is kept for good, with its day and until when it holds, and it goes with the backups. Initials can be erased there, too.
class-remove = Take all of { $who } off this device and out of the log
class-keeping = What stays on this device
class-keeping-hint = The results go when you close the page, unless you keep them. Codes are no part of the log and of no backup; what you write into the log is. What you take off this device is gone from it. Copies that you saved or passed on stay where they are.
class-keep = Keep the results on this device
class-kept = The results are kept on this device.
class-not-kept = The results are not kept.
class-save = Save all codes as a file
class-erase = Take all results off this device
class-remove-codes = All results of { $who } go off this device. What others did stays.
class-remove-off = Take them off
class-erase-warning = { $n ->
    [one] One result goes off this device. What you wrote into the log stays there, and so do files that you saved.
   *[other] { $n } results go off this device. What you wrote into the log stays there, and so do files that you saved.
 }
class-erase-do = Take all off
class-erase-leave = Leave them here
class-gone = They are off this device. You can put them back until you leave this part.
class-put-back = Put them back

## The first fill, step by step

first-fill = Your first fill
first-fill-about = A guide leads you through one fill on this page. It shows you each step where you will do it at work.
first-fill-safe = The guide fills in nothing and records nothing. Only what you do yourself counts. You may skip any step, and stop when you like.
first-fill-begin = Begin your first fill
first-fill-again = Go through it once more
first-fill-resume = Go on with step { $n }
first-fill-runs = It is under way. You are at step { $n } of { $of }.
first-fill-link = New to this? Let a guide lead you through your first fill.
first-fill-link-resume = Go on with your first fill, step { $n }
first-fill-at = First fill, step { $n } of { $of }
first-fill-told = { $at }: { $title }. { $standing }
first-fill-is-done = Done
first-fill-not-done = To do
first-fill-is-warned = Done, with a warning
first-fill-warned = Done, with a warning: { $warning }
first-fill-stopped = Not done yet. Fill warns you: { $warning }
first-fill-escape = To come back here, press the line at the top or the Escape key.
first-fill-to = Take me to “{ $control }”
first-fill-next = Next step
first-fill-finish = Finish
first-fill-skip = Skip this step
first-fill-back = Back
first-fill-pause = Leave it for now
first-fill-close = Stop the guide
first-fill-put-away = Close
first-fill-ended = That was your first fill
first-fill-ended-all = You went through all steps. Let someone who knows the job watch your first fills at work.
first-fill-ended-skipped = You skipped these steps. Go back to them, or let someone show you.
first-fill-ended-governs = The label, its SDS, the rules of your site and trained people decide.

first-fill-wear = Put on what the label asks for
first-fill-wear-do = Do this before you open a bottle. A splash can hurt your eyes and skin at once. The page lists what to wear under “{ $control }”. The label and the SDS decide.
first-fill-wear-list = For { $product } wear this: { $wear }
first-fill-wear-none = No hazard code of { $product } asks you to wear something. Follow its label, its SDS and the rules of your site.
first-fill-wear-unknown = The page does not know all hazards of { $product }. Read its label and its SDS, or ask.
first-fill-wear-on = I have it on
first-fill-wear-read = I have read the label
first-fill-wear-again = You put things on for another label. Look at step 1 again for this one.
first-fill-wear-again-go = Show step 1
first-fill-wear-lacks = There is no product yet. Choose one in step 3, then come back.
first-fill-wear-open = Tick the box when you are ready.
first-fill-wear-done = You are ready for { $product }.

first-fill-machine = Choose your machine
first-fill-machine-do = Look at the machine next to you. Choose it under “{ $control }”. The page needs its tank to know how much water goes in.
first-fill-machine-lacks = The page does not know how much the tank holds. Look on its plate or in its manual, or ask.
first-fill-machine-done = The page has { $machine }, with a tank of { $tank }. Is that yours? If not, choose another.

first-fill-product = Choose the product and read its label
first-fill-product-do = Take the bottle in your hand. Choose the same name under “Product”. Then hold “Dilution on the label” next to the label. Both must say the same.
first-fill-product-locked = The floor and its standard decide the product here. Take that bottle in your hand. Check that its name is the one on this page. If it is not, ask before you pour.
first-fill-product-lacks = The page cannot read this label yet. Go to “Dilution on the label” and see what it says there.
first-fill-product-done = The page has { $product }, with “{ $label }” on the label. Is that what your bottle says?

first-fill-floor = Choose the floor and see its rule
first-fill-floor-do = Choose the floor that you will clean. Some products harm some floors for good. Where your site has a standard for it, that rule counts.
first-fill-floor-locked = Choose the floor that you will clean. Your site has a standard for it. The page fills by that rule and by no other.
first-fill-floor-lacks = There is no floor yet. Ask which floor it is and what may go on it.
first-fill-floor-done = The page has { $floor }.
first-fill-floor-standard = Its standard is { $standard }.
first-fill-floor-no-standard = No standard is in force for this product on it. The label decides.

first-fill-level = How full, and what you measure with
first-fill-level-do = Make only as much as you need. Set the level under “Fill the tank to”. Then choose the jug or pump that hangs at your tap under “Measure on the wall”.
first-fill-level-lacks = The page cannot read the level or the measure yet. It says why under the field.
first-fill-level-done = You fill to { $level }. Your measure is this: { $measure }. Is that so?

first-fill-amount = Read the amount
first-fill-amount-do = This is how much product goes into this fill. Read it out loud, with its unit. Never guess, and never add one for good luck.
first-fill-amount-is = Your amount is { $amount }.
first-fill-amount-lacks = There is no amount yet. The page says what is missing where it would stand.
first-fill-amount-stopped = A warning stands where the amount would stand. Read it and do what it says.
first-fill-amount-open = Now say why water goes in first.
first-fill-amount-done = You have the amount, and you know why water goes first.
first-fill-why = When you pour by hand, why does the water go in first?
first-fill-why-cheaper = The product costs less that way.
first-fill-why-splash = It foams and splashes less.
first-fill-why-same = It makes no difference.
first-fill-why-right = Right. Water that falls on product foams up and can splash in your face. Acid too goes into the water, never water into acid.
first-fill-why-wrong = Not quite. Think of water that falls hard on strong product. Choose again.

first-fill-record = Record the fill
first-fill-record-do = At work you press “{ $control }” once the tank is filled. So the next shift knows what is in it.
first-fill-record-training = Is this only training? Then skip this step. A record goes into the real log and stays there. You can strike it later, but it can still be seen.
first-fill-record-lacks = There is no amount to record yet.
first-fill-record-stopped = A warning stands in the way, so nothing can be recorded here.
first-fill-record-open = You have not put a fill in the log since you began.
first-fill-record-done = Your fill is in the log.

first-fill-shift = At the end of the shift
first-fill-shift-do = Dirty water left in a tank smells and grows germs. Do these five things each time, in this order. Then tick them off under “{ $control }” on Log.
first-fill-shift-drain = Drain both tanks where dirty water may go.
first-fill-shift-rinse = Rinse them with clean water.
first-fill-shift-filters = Clean the filters, so that the vacuum gets air.
first-fill-shift-brush = Clean the debris bag or the brush.
first-fill-shift-squeegee = Wipe the squeegee, so that it leaves no streaks.
first-fill-shift-lacks = No fill of this machine is in the log today, so there is nothing to tick off. Read the five things.
first-fill-shift-open = Still to do: { $tasks }.
first-fill-shift-done = All five are ticked off.
