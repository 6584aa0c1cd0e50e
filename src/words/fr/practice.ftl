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
