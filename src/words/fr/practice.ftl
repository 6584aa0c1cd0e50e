# French, in Fluent syntax: what the exercises ask and say, the numbers, a group’s results and the first fill.
# No native reader has checked this file yet.

# Topics and levels
practice-topic-label = Lire une étiquette
practice-topic-units = Changer d’unité
practice-topic-dose = Doser un remplissage
practice-topic-top-up = Compléter un réservoir
practice-topic-setting = Choisir un réglage
practice-topic-shift = Prévoir un petit poste
practice-topic-mistake = Trouver l’erreur
practice-topic-rescue = Corriger un réservoir trop fort
practice-topic-ppe = Choisir quoi porter
practice-topic-pairs = Ce qui ne doit jamais se rencontrer
practice-topic-foam = Mousse
practice-level-first = Niveau 1
practice-level-first-is = Une étape et des nombres faciles. L’étiquette est expliquée.
practice-level-second = Niveau 2
practice-level-second-is = L’étiquette telle qu’imprimée, des réservoirs pas pleins et des unités mêlées.
practice-level-third = Niveau 3
practice-level-third-is = Une plage où choisir. Les limites de la machine. Un reste dans le réservoir. Des unités impériales.

practice-lack-machine = Ajoutez d’abord une machine avec son réservoir.
practice-lack-label = Ajoutez d’abord un produit dont l’étiquette peut se lire.
practice-lack-liquid = Ajoutez d’abord un produit liquide dont l’étiquette peut se lire.
practice-lack-measure = Ajoutez d’abord un pichet, un gobelet, un bouchon ou une pompe avec sa graduation.
practice-lack-settings = Ajoutez d’abord une machine avec sa largeur, sa vitesse et deux réglages de débit.
practice-lack-floor = Ajoutez d’abord un sol et combien de solution il doit recevoir.
practice-lack-hazards = Ajoutez d’abord un produit avec les codes de danger de son étiquette.
practice-lack-nothing-fits = Ces réservoirs, étiquettes et mesures ne vont pas ensemble. Essayez une mesure plus fine.

# The parts of a task
practice-label = L’étiquette de { $product } dit « { $label } ».
practice-measure-us = Ses oz et gal sont des unités américaines.
practice-measure-imperial = Ses oz et gal sont des unités impériales.
practice-aim-low = Prenez le moins que permet l’étiquette.
practice-aim-high = Prenez le plus que permet l’étiquette.
practice-means-plus-water = Cela veut dire 1 part de produit plus ce nombre de parts d’eau.
practice-means-of-total = Cela veut dire 1 part de produit dans ce nombre de parts de solution en tout.
practice-means-per-water = Cela veut dire tant de produit ajouté à tant d’eau.
practice-means-made-up = Cela veut dire tant de produit dans tant de solution finie.
practice-means-percent = Cela veut dire des parts de produit dans 100 parts de solution finie.
practice-means-per-tank = Cela veut dire tant de produit pour un réservoir plein.
practice-means-powder = Cela veut dire un poids de poudre pour tant de solution.
practice-means-active = Cela veut dire des parts de substance active dans un million de parts de solution.
practice-means-packets = Cela veut dire des sachets ou pastilles entiers pour tant de solution.
practice-tank = Le réservoir de { $machine } contient { $tank }.
practice-machine = La machine est { $machine }.
practice-machine-least = La machine demande au moins { $amount } de produit pour un réservoir plein.
practice-machine-most = La machine accepte au plus { $amount } de produit pour un réservoir plein.
practice-standard = La consigne de votre site dit « { $rule } ».
practice-fill-full = Vous le remplissez jusqu’en haut. L’eau et le produit font un réservoir plein.
practice-fill-part = Vous le remplissez à { $fill }. L’eau et le produit arrivent à ce repère.
practice-fill-on-top = Vous mettez { $fill } d’eau. Le produit vient en plus.
practice-jug = Vous mesurez avec ceci : { $measure }. Une graduation fait { $step }.
practice-tested = Vous avez fait l’essai de secouage. Il ne mousse pas.
practice-rest-same = Il y reste { $left } de la même solution. Elle a la bonne force.
practice-rest-other = Il y reste { $left } de solution du même produit. Elle a été faite avec { $parts } parts d’eau pour 1 part de produit.
practice-top-up-full = Vous le complétez jusqu’en haut.
practice-top-up-part = Vous le complétez jusqu’à { $fill }.
practice-found = Il contient { $found } de solution, dont { $poured } de produit. C’est trop fort.
practice-floor = Ce sol doit recevoir { $low } à { $high } : { $floor }.
practice-speed = Elle avance à { $speed }.
practice-path = Elle lave une largeur de { $path }.
practice-path-overlap = Elle lave une largeur de { $path }. Les passages se recouvrent de { $overlap }.
practice-area = Vous lavez { $area } de ce sol : { $floor }. Vous déposez { $rate }.
practice-area-plain = Vous lavez { $area } et déposez { $rate }.
practice-reuse = La machine réutilise { $reuse } de sa solution.
practice-ppe = Vous versez { $product }. Mention d’avertissement sur l’étiquette : { $signal }.
practice-ppe-says = L’étiquette dit : { $statement }.
practice-ppe-codes = Les codes de l’étiquette sont { $codes }.
practice-ppe-no-codes = Sa fiche n’a aucun code de danger.
practice-ppe-nothing = Rien : l’étiquette n’en demande pas
practice-pair = { $a } avec { $b }
practice-foam-product = Comment mousse { $product } : { $class }.
practice-foam-any-product = Vous avez un nouveau produit. Comment il mousse : { $class }.
practice-foam-vacuum = { $machine } reprend par aspiration.
practice-foam-no-vacuum = { $machine } n’a pas d’aspiration.
practice-foam-any-machine = Votre machine reprend par aspiration.
practice-foam-shaken = Vous faites l’essai de secouage. Tout de suite, la mousse monte à { $first }. Après une minute, elle est à { $later }.
practice-foam-happens = Vous utilisez { $product }. Le réservoir déborde de mousse.
practice-foam-happens-any = Le réservoir déborde de mousse.
practice-setting-rate = Réglage { $n } : dépose { $amount }
practice-setting-flow = Réglage { $n } : { $amount }
practice-setting-none = Aucun d’eux
practice-ticket-water-first = Un bon de remplissage dit : l’eau a été mise d’abord.
practice-ticket-product-first = Un bon de remplissage dit : le produit a été mis d’abord.
practice-ticket-poured = Produit versé : { $poured }.
practice-ticket-nothing = Tout s’est bien passé
practice-ticket-is-right = Le bon est juste.
practice-ticket-is-wrong = Le bon a une erreur.

# What is asked
practice-ask-convention = Que veut dire l’étiquette ?
practice-ask-parts = Combien de parts a la solution finie ?
practice-ask-percent = Quel pourcentage de la solution est du produit ? Donnez trois chiffres.
practice-ask-units = Combien de { $unit } font { $amount } ? Donnez trois chiffres.
practice-ask-dose = Combien de produit versez-vous ? À une demi-graduation près, c’est bon.
practice-ask-top-up = Combien de produit ajoutez-vous ? À une demi-graduation près, c’est bon.
practice-ask-setting = Quel est le plus petit réglage qui donne assez au sol, et pas trop ?
practice-ask-solution = De combien de solution avez-vous besoin ? Donnez trois chiffres.
practice-ask-fills = Combien de fois remplissez-vous le réservoir ?
practice-ask-product = De combien de produit avez-vous besoin pour les deux zones ? Donnez trois chiffres.
practice-ask-mistake = Qu’est-ce qui s’est mal passé ?
practice-ask-rescue-water = Combien d’eau ajoutez-vous pour le corriger ? Donnez trois chiffres.
practice-ask-rescue-drain = Il n’y a pas la place pour toute l’eau qu’il faut. Combien videz-vous d’abord, pour qu’un réservoir plein soit juste ? Donnez trois chiffres.
practice-ask-ppe = De quoi avez-vous besoin ? Choisissez tout ce qu’il faut.
practice-ask-pair = Quels sont les deux qui ne doivent jamais se rencontrer ?
practice-ask-pairs = Lesquels gardez-vous séparés ? Choisissez tous ceux qui ne doivent jamais se rencontrer, et tous ceux dont l’un n’est pas connu.
practice-ask-foam = Que faites-vous ?
practice-ask-foam-class = Quelle sorte de produit est-ce ?
practice-ask-foam-order = Que faites-vous, et dans quel ordre ?

# What came of it
practice-answer = Votre réponse
practice-choose = Choisissez d’abord une réponse.
practice-above-nothing = Votre réponse doit être plus que rien. Tapez un nombre au-dessus de zéro.
practice-no-try = Cela n’a pas compté comme essai.
practice-as-given = C’est la quantité telle qu’elle était donnée. Dites-la en { $unit }.
practice-answer-poured = { $n ->
    [one] { $exact } ; avec votre mesure { $poured }, { $n } graduation
   *[other] { $exact } ; avec votre mesure { $poured }, { $n } graduations
}
practice-right = Juste.
practice-rounded = Juste pour votre mesure. À trois chiffres, c’est { $exact }.
practice-wrong = Pas encore. Relisez l’exercice.
practice-step = { $what } : { $symbol } = { $equation }. Avec { $given }, { $symbol } = { $result }.
practice-so = La réponse est { $answer }.
practice-because-units = { $one } font { $many }.
practice-because-standard = La consigne de votre site reste dans l’étiquette. Elle décide.
practice-because-setting = Calculez ce que dépose chaque réglage. Prenez le plus petit qui atteint le minimum que le sol doit recevoir.
practice-because-rescue = Le produit reste le même. Seule l’eau augmente. Attendez que ce soit mélangé, puis lisez de nouveau la force.
practice-because-nothing = Quelqu’un a lu l’étiquette et n’a trouvé aucun danger. Portez quand même ce que demande votre site.
practice-because-other-step = La graduation la plus proche est au-dessus ou au-dessous de ce que permettent les règles. Prenez la suivante.
practice-because-no-vacuum = Il n’y a pas d’aspiration qui pourrait avaler de la mousse.
practice-because-little-foam = Si peu de mousse ne monte pas jusqu’à l’aspiration.
practice-because-unknown = L’étiquette n’est pas entièrement connue. Ce qui n’est pas connu compte comme le pire cas.

# Wrong roads, and what to do instead
practice-way-parts-for-total = Presque. Vous avez lu l’étiquette comme des parts de la solution finie. Elle compte les parts d’eau. Ajoutez 1 pour le produit.
practice-way-total-for-parts = Presque. Vous avez lu l’étiquette comme des parts d’eau. Elle compte la solution finie. Le produit est une de ces parts.
practice-way-water-for-mix = Presque. Vous avez pris l’eau pour la solution finie. Le produit vient en plus de l’eau.
practice-way-mix-for-water = Presque. Vous avez pris la solution finie pour de l’eau. Une partie est du produit.
practice-way-other-reading = C’est une autre façon de l’écrire. Regardez de nouveau les mots et les signes de l’étiquette.
practice-way-full-for-part = C’est pour un réservoir plein. Vous n’en remplissez qu’une partie. Prenez la même partie du produit.
practice-way-full-for-rest = C’est pour un remplissage entier. Le reste dans le réservoir contient du produit. Retirez-le.
practice-way-ounces-for-millilitres = Vous avez écrit des onces comme des mL. Regardez l’unité de votre mesure. Une fl oz américaine fait environ 30 mL.
practice-way-millilitres-for-ounces = Vous avez écrit des mL comme des onces. Regardez l’unité de votre mesure. Une fl oz américaine fait environ 30 mL.
practice-way-us-for-imperial = Vous avez pris les unités américaines. Celles-ci sont impériales. Un gallon impérial fait un cinquième de plus qu’un gallon américain.
practice-way-imperial-for-us = Vous avez pris les unités impériales. Celles-ci sont américaines. Un gallon américain fait un sixième de moins qu’un gallon impérial.
practice-way-weight-for-volume = Une once de poids n’est pas une once liquide. Pour les liquides, prenez l’once liquide.
practice-way-upside-down = Vous êtes allé dans le mauvais sens. Faites l’inverse : divisez là où vous avez multiplié.
practice-way-decimal-slip = La virgule a glissé d’une place. Comptez de nouveau les zéros.
practice-way-other-end = C’est l’autre bout de la plage. Regardez quel bout l’exercice demande.
practice-way-machine-ignored = La machine a sa propre limite. Comparez votre nombre avec elle.
practice-way-standard-ignored = Votre site a une consigne pour cela. Comparez votre nombre avec elle.
practice-way-rest-ignored = Le reste a une autre force. Calculez combien de produit il contient et retirez-le.
practice-way-end-for-added = C’est ce que vous avez à la fin. L’exercice demande ce que vous ajoutez ou videz.
practice-way-same-again = Vous avez repris autant. C’est juste seulement quand la solution est deux fois trop forte.
practice-way-room-ignored = C’est l’eau qui n’a pas la place. Une partie de la solution forte doit partir, et du produit part avec elle.
practice-way-thousand = Le taux est pour mille. Divisez par 1 000.
practice-way-rounded-down = La dernière partie d’un réservoir est aussi un remplissage. Arrondissez vers le haut.
practice-way-not-whole = On remplit un nombre entier de fois. Arrondissez au nombre entier suivant.
practice-way-reuse-ignored = La machine réutilise une partie de sa solution. Seul le reste est consommé.
practice-way-one-area-only = C’est pour une seule zone. Ajoutez l’autre.
practice-way-mix-for-product = C’est toute la solution. Une petite partie seulement est du produit.
practice-way-product-first = L’eau d’abord, puis le produit. Cela éclabousse moins et mousse moins.
practice-way-too-dry = C’est trop peu. La saleté reste sur le sol. Montez.
practice-way-too-wet = C’est trop. Le sol reste mouillé et glissant. Descendez.
practice-way-more-than-needed = Cela irait, mais un plus petit va aussi. Prenez le plus petit.
practice-way-none-thought = L’un d’eux convient. Calculez ce que dépose chacun.
practice-way-overlooked = Il y a une erreur. Calculez la dose et comparez-la au bon.
practice-way-false-alarm = Le bon est juste. Calculez la dose et comparez-la au bon.
practice-way-other-mistake = C’est une autre erreur. Calculez la dose, puis voyez quelle erreur mène au nombre sur le bon.
practice-way-no-eyes = Vos yeux sont à découvert. Regardez ce que l’étiquette dit des yeux.
practice-way-no-skin = Votre peau est à découvert. Regardez ce que l’étiquette dit de la peau.
practice-way-no-air = Pensez à l’air que vous respirez. Regardez ce que l’étiquette en dit.
practice-way-more-than-asked = C’est plus que ne demande l’étiquette. Votre site peut quand même le demander.
practice-way-pair-missed = Regardez de nouveau. Vous avez oublié deux produits qui ne doivent jamais se rencontrer.
practice-way-unknown-cleared = Personne ne sait ce que contient l’un d’eux. Ce qui n’est pas connu reste séparé.
practice-way-pair-not-listed = Pour ces deux, aucune incompatibilité n’est connue. Ne mélangez quand même jamais exprès.
practice-way-foam-let-in = Il mousse. Il ne doit pas aller dans une machine avec aspiration.
practice-way-not-tested = Personne ne l’a essayé. Jusque-là, il compte comme moussant.
practice-way-kept-out = Ce n’est pas ce que disent les faits. Regardez la hauteur de la mousse, à quelle vitesse elle tombe, et s’il y a une aspiration.
practice-way-not-stopped = Arrêtez d’abord la machine. Tout le reste peut attendre.
practice-way-order-mixed = La première étape est juste. Regardez l’ordre des autres.
practice-way-as-given = C’est la quantité telle qu’elle était donnée. Dites-la dans l’unité que demande l’exercice.
practice-way-round-factor = Vous avez pris un nombre rond pour l’unité, par exemple 30 mL pour une once. C’est bon pour une idée. Ici, trois chiffres comptent.

# What a wrong answer could do
practice-harm-over-label = C’est plus que ne permet l’étiquette. Trop fort, cela peut brûler la peau, abîmer le sol et laisser un film glissant.
practice-harm-forbidden-pair = Au travail, cela pourrait blesser des gens. Ces deux ne doivent pas se rencontrer.
practice-harm-no-eyes = Au travail, cela pourrait vous coûter la vue. Une seule éclaboussure suffit.
practice-harm-no-skin = Au travail, cela pourrait vous brûler la peau.
practice-harm-no-air = Au travail, cela pourrait vous abîmer les poumons.
practice-harm-foam = Au travail, la mousse pourrait atteindre le moteur de l’aspiration et arrêter la machine.
practice-harm-splash = Au travail, le produit fort pourrait vous gicler dessus.

# Mistakes on a fill ticket
practice-made-parts-for-total = Les parts d’eau ont été prises pour des parts de la solution finie
practice-made-total-for-parts = Les parts de la solution finie ont été prises pour des parts d’eau
practice-made-water-for-mix = L’eau a été prise pour la solution finie
practice-made-mix-for-water = La solution finie a été prise pour de l’eau
practice-made-full-for-part = La dose est pour un réservoir plein
practice-made-ounces-for-millilitres = Des onces ont été écrites comme des mL
practice-made-millilitres-for-ounces = Des mL ont été écrits comme des onces
practice-made-us-for-imperial = Des gallons américains ont été pris pour des impériaux
practice-made-imperial-for-us = Des gallons impériaux ont été pris pour des américains
practice-made-other-end = Le mauvais bout de la plage a été pris
practice-made-machine-ignored = La limite de la machine a été oubliée
practice-made-standard-ignored = La consigne du site a été oubliée
practice-made-product-first = Le produit a été mis avant l’eau

# Sessions and their codes
practice-session-no-topic = Choisissez d’abord un sujet.
practice-session-count = Ce nombre d’exercices ne va pas. Choisissez-en moins.
practice-session-lacks = Un des sujets ne peut pas être fait avec vos fiches. Retirez-le, ou ajoutez ce qu’il lui faut.
practice-session-fewer = Il n’y a pas autant d’exercices différents. Choisissez-en moins, ou plus de sujets.
practice-session-link = La séance ne tient pas dans un code. Choisissez moins de sujets, ou distribuez-la sur papier.
practice-code-altered = Ce code n’est pas tel qu’il a été fait. Vérifiez chaque lettre.
practice-code-later = Ce code vient d’une version plus récente. Mettez la page à jour.
practice-code-initials = Tapez vos initiales, quatre lettres au plus.
practice-code-day = Tapez le jour en année-mois-jour.
practice-code-session = Ce résultat n’est d’aucune séance.
practice-code-marks = Il n’y a encore rien à rendre.
practice-class-other = Ce résultat n’est pas de cette séance.
practice-class-twice = Ce résultat est déjà dans la liste.
practice-class-ahead = Son jour est après celui de cet appareil. Vérifiez l’horloge des deux.
practice-class-erased = Le journal a un résultat pareil, et ses initiales ont été effacées à la demande de la personne. Ne le prenez que si cette personne le veut. C’est alors une nouvelle saisie.

# The page
practice-heading = Que feriez-vous ?
practice-about = Des exercices avec vos propres machines, produits et sols. Rien de ce que vous faites ici ne change votre site ni votre journal.
practice-governs = Ce sont des exercices. Au travail, l’étiquette, sa FDS, les règles de votre site et des personnes formées décident.
practice-parts = Que faire ici
practice-practise = S’exercer
practice-numbers = Voir les nombres
practice-hand-out = Distribuer
practice-class = Résultats du groupe
practice-choose-heading = Choisissez à quoi vous exercer
practice-topics = Sujets
practice-topics-all = Choisir tous les sujets
practice-topics-none = N’en choisir aucun
practice-level = Niveau
practice-count = Combien d’exercices
practice-count-hint = Au plus { $most }.
practice-seed = Numéro de groupe
practice-seed-hint = Le même numéro donne les mêmes exercices sur chaque appareil qui a les mêmes fiches. Vide pour de nouveaux.
practice-session-seed = Un numéro de groupe n’a que des chiffres et ne dépasse pas 4 294 967 295.
practice-begin = Commencer
practice-stock = Fait avec
practice-made-of = { $site } : machines { $machines }, produits { $products }, sols { $floors }, mesures { $measures }
practice-check-is = séance { $check }
practice-tasks = { $n ->
    [one] { $n } exercice
   *[other] { $n } exercices
}
practice-progress = { $n } sur { $of }
practice-check = Vérifier
practice-next = Suivant
practice-end = Voir votre résultat
practice-skip = Passer celui-ci
practice-wrong-last = Ce n’est pas cela. Regardez comment on le calcule.
practice-once-more = Vous avez encore un essai.
practice-right-is = La réponse est : { $answer }
practice-from = Ces fiches viennent de { $site }.
practice-stop = Arrêter cette séance
practice-stop-hint = Ce que vous y avez fait est perdu. Pour revenir plus tard, quittez simplement la page : elle vous attend.
practice-leave = Arrêter et tout laisser
practice-order-hint = Mettez-les en ordre. La première étape vient en premier.
practice-up = Monter
practice-down = Descendre
practice-up-of = Monter : { $what }
practice-down-of = Descendre : { $what }
practice-drawing = Un gobelet avec { $dose } de produit, une graduation fait { $step }. À côté, un réservoir de { $tank } rempli à { $total }. La couche au fond du réservoir est le produit, 1 part pour { $ratio } parts d’eau.
practice-drawing-cup = Produit
practice-picture-ratio = C’est 1 pour { $ratio }. La couche au fond du réservoir est tout le produit qu’il contient.
practice-picture-half = Une graduation de votre gobelet fait { $step }. Une demi-graduation de moins donne 1 pour { $less }. Une demi-graduation de plus donne 1 pour { $more }.
