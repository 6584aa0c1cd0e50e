# French, in Fluent syntax: what the exercises ask and say, the numbers, a group’s results and the first fill.
# No native reader has checked this file yet.

# Topics and levels
practice-topic-label = Lire l’étiquette
practice-topic-units = Changer d’unité
practice-topic-dose = Doser le produit
practice-topic-top-up = Compléter
practice-topic-setting = Choisir un réglage
practice-topic-shift = Prévoir un petit poste
practice-topic-mistake = Trouver l’erreur
practice-topic-rescue = Corriger une solution trop forte
practice-topic-ppe = Choisir quoi porter
practice-topic-pairs = À ne jamais mettre ensemble
practice-topic-foam = Mousse
practice-level-first = Niveau 1
practice-level-first-is = Une étape et des nombres faciles. L’étiquette est expliquée.
practice-level-second = Niveau 2
practice-level-second-is = L’étiquette telle qu’imprimée, des réservoirs remplis en partie et des unités mêlées.
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
practice-machine = C’est cette machine : { $machine }.
practice-machine-least = La machine demande au moins { $amount } de produit pour un réservoir plein.
practice-machine-most = La machine accepte au plus { $amount } de produit pour un réservoir plein.
practice-standard = La consigne de votre site dit « { $rule } ».
practice-fill-full = Vous le remplissez jusqu’en haut. L’eau et le produit font un réservoir plein.
practice-fill-part = Vous le remplissez à { $fill }. L’eau et le produit arrivent à ce repère.
practice-fill-on-top = Vous mettez { $fill } d’eau. Le produit vient en plus.
practice-jug = Vous mesurez avec ceci : { $measure }. Une graduation fait { $step }.
practice-tested = Vous avez fait l’essai de secouage. Il ne mousse pas.
practice-rest-same = Il y reste { $left } de la même solution. Elle a la bonne concentration.
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
practice-foam-product = Mousse de { $product } : { $class }.
practice-foam-any-product = Vous avez un nouveau produit. Mousse : { $class }.
practice-foam-vacuum = { $machine } aspire la solution du sol.
practice-foam-no-vacuum = { $machine } n’a pas d’aspiration.
practice-foam-any-machine = Votre machine aspire la solution du sol.
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
practice-ticket-is-right = Le bon de remplissage est correct.
practice-ticket-is-wrong = Le bon de remplissage contient une erreur.

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
practice-ask-rescue-water = Combien d’eau ajoutez-vous pour que ce soit juste ? Donnez trois chiffres.
practice-ask-rescue-drain = Il n’y a pas la place pour toute l’eau qu’il faut. Combien videz-vous d’abord, pour que le réservoir plein ait la bonne dose ? Donnez trois chiffres.
practice-ask-ppe = De quoi avez-vous besoin ? Choisissez tout ce qu’il faut.
practice-ask-pair = Quels sont les deux qui ne doivent jamais se mélanger ?
practice-ask-pairs = Lesquels gardez-vous séparés ? Choisissez tous ceux qui ne doivent jamais se mélanger, et tous ceux dont l’un n’est pas connu.
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
practice-because-units = { $one } fait { $many }.
practice-because-standard = La consigne de votre site reste dans les limites de l’étiquette. C’est elle qui compte.
practice-because-setting = Calculez ce que dépose chaque réglage. Prenez le plus petit qui atteint le minimum que le sol doit recevoir.
practice-because-rescue = Le produit reste le même. Seule l’eau augmente. Attendez que ce soit mélangé, puis lisez de nouveau la concentration.
practice-because-wear = { $piece }. L’étiquette porte { $code } : « { $statement } »
practice-because-wear-unknown = { $piece }. On ne connaît pas toute l’étiquette : le pire cas le demande.
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
practice-way-full-for-rest = C’est pour un remplissage entier. Le reste dans le réservoir contient du produit. Déduisez-le.
practice-way-ounces-for-millilitres = Vous avez écrit des onces comme des mL. Regardez l’unité de votre mesure. Une fl oz américaine fait environ 30 mL.
practice-way-millilitres-for-ounces = Vous avez écrit des mL comme des onces. Regardez l’unité de votre mesure. Une fl oz américaine fait environ 30 mL.
practice-way-us-for-imperial = Vous avez pris les unités américaines. Celles-ci sont impériales. Un gallon impérial fait un cinquième de plus qu’un gallon américain.
practice-way-imperial-for-us = Vous avez pris les unités impériales. Celles-ci sont américaines. Un gallon américain fait un sixième de moins qu’un gallon impérial.
practice-way-weight-for-volume = Une once de poids n’est pas une once liquide. Pour les liquides, prenez l’once liquide.
practice-way-upside-down = Vous avez pris le mauvais sens. Faites l’inverse : divisez là où vous avez multiplié.
practice-way-decimal-slip = La virgule a glissé d’une place. Comptez de nouveau les zéros.
practice-way-other-end = C’est l’autre bout de la plage. Regardez quel bout l’exercice demande.
practice-way-machine-ignored = La machine a sa propre limite. Comparez votre nombre avec elle.
practice-way-standard-ignored = Votre site a une consigne pour cela. Comparez votre nombre avec elle.
practice-way-rest-ignored = Le reste a une autre concentration. Calculez combien de produit il contient et déduisez-le.
practice-way-end-for-added = C’est ce que vous avez à la fin. L’exercice demande ce que vous ajoutez ou videz.
practice-way-same-again = Vous avez ajouté encore autant. C’est juste seulement quand la solution est deux fois trop forte.
practice-way-room-ignored = C’est l’eau qui n’a pas la place. Une partie de la solution forte doit partir, et du produit part avec elle.
practice-way-thousand = Le taux est pour mille. Divisez par 1 000.
practice-way-rounded-down = La dernière partie d’un réservoir est aussi un remplissage. Arrondissez vers le haut.
practice-way-not-whole = On remplit un nombre entier de fois. Arrondissez au nombre entier suivant.
practice-way-reuse-ignored = La machine réutilise une partie de sa solution. Seul le reste est consommé.
practice-way-one-area-only = C’est pour une seule zone. Ajoutez l’autre.
practice-way-mix-for-product = C’est toute la solution. Une petite partie seulement est du produit.
practice-way-product-first = L’eau d’abord, puis le produit. Cela éclabousse moins et mousse moins.
practice-way-too-dry = C’est trop peu. La saleté reste sur le sol. Prenez plus haut.
practice-way-too-wet = C’est trop. Le sol reste mouillé et glissant. Prenez plus bas.
practice-way-more-than-needed = Cela irait, mais un plus petit va aussi. Prenez le plus petit.
practice-way-none-thought = L’un d’eux convient. Calculez ce que dépose chacun.
practice-way-overlooked = Il y a une erreur. Calculez la dose et comparez-la avec celle qui est écrite.
practice-way-false-alarm = Le bon de remplissage est correct. Calculez la dose et comparez-la avec celle qui est écrite.
practice-way-other-mistake = C’est une autre erreur. Calculez la dose, puis voyez quelle erreur mène au nombre qui est écrit.
practice-way-no-eyes = Vos yeux sont à découvert. Regardez ce que l’étiquette dit des yeux.
practice-way-no-skin = Votre peau est à découvert. Regardez ce que l’étiquette dit de la peau.
practice-way-no-air = Pensez à l’air que vous respirez. Regardez ce que l’étiquette en dit.
practice-way-more-than-asked = C’est plus que ne demande l’étiquette. Votre site peut quand même le demander.
practice-way-pair-missed = Regardez de nouveau. Vous avez oublié deux produits qui ne doivent jamais se mélanger.
practice-way-unknown-cleared = Personne ne sait ce que contient l’un d’eux. Ce qui n’est pas connu reste séparé.
practice-way-pair-not-listed = Pour ces deux, aucune incompatibilité n’est connue. Ne mélangez quand même jamais exprès.
practice-way-foam-let-in = Il mousse. Il ne doit pas aller dans une machine avec aspiration.
practice-way-not-tested = Personne ne l’a testé. Jusque-là, il compte comme moussant.
practice-way-kept-out = Ce n’est pas ce que disent les faits. Regardez la hauteur de la mousse, à quelle vitesse elle tombe, et s’il y a une aspiration.
practice-way-not-stopped = Arrêtez d’abord la machine. Tout le reste peut attendre.
practice-way-order-mixed = La première étape est juste. Regardez l’ordre des autres.
practice-way-as-given = C’est la quantité telle qu’elle était donnée. Dites-la dans l’unité que demande l’exercice.
practice-way-round-factor = Vous avez pris un nombre rond pour l’unité, par exemple 30 mL pour une once. Cela suffit pour une estimation. Ici, trois chiffres comptent.

# What a wrong answer could do
practice-harm-over-label = C’est plus que ne permet l’étiquette. Trop fort, cela peut brûler la peau, abîmer le sol et laisser un film glissant.
practice-harm-forbidden-pair = Au travail, cela pourrait blesser des gens. Ces deux-là ne doivent pas se mélanger.
practice-harm-no-eyes = Au travail, cela pourrait vous coûter la vue. Une seule éclaboussure suffit.
practice-harm-no-skin = Au travail, cela pourrait vous brûler la peau.
practice-harm-no-air = Au travail, cela pourrait abîmer vos poumons.
practice-harm-foam = Au travail, la mousse pourrait atteindre le moteur de l’aspiration et arrêter la machine.
practice-harm-splash = Au travail, le produit concentré pourrait vous gicler dessus.

# Mistakes on a fill ticket
practice-made-parts-for-total = Les parts d’eau ont été prises pour des parts de la solution finie
practice-made-total-for-parts = Les parts de la solution finie ont été prises pour des parts d’eau
practice-made-water-for-mix = L’eau a été prise pour la solution finie
practice-made-mix-for-water = La solution finie a été prise pour de l’eau
practice-made-full-for-part = La dose est pour un réservoir plein
practice-made-ounces-for-millilitres = Des onces écrites comme des mL
practice-made-millilitres-for-ounces = Des mL écrits comme des onces
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
practice-class-erased = Le journal a un résultat pareil, et ses initiales ont été effacées à la demande de la personne. Ne le prenez que si cette personne le veut. C’est alors un nouvel enregistrement.

# The page
practice-heading = Que feriez-vous ?
practice-about = Des exercices avec vos propres machines, produits et sols. Rien de ce que vous faites ici ne change votre site ni votre journal.
practice-governs = Ce sont des exercices. Au travail, ce sont l’étiquette, sa FDS, les règles de votre site et des personnes formées qui décident.
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
practice-seed-hint = Le même numéro donne les mêmes exercices sur chaque appareil qui a les mêmes fiches. Laissez vide pour de nouveaux.
practice-session-seed = Un numéro de groupe n’a que des chiffres et ne dépasse pas 4 294 967 295.
practice-begin = Débuter
practice-stock = Fait avec
practice-made-of = { $site } : machines { $machines }, produits { $products }, sols { $floors }, mesures { $measures }
practice-check-is = séance { $check }
practice-tasks = { $n ->
    [one] { $n } exercice
   *[other] { $n } exercices
}
practice-progress = { $n } sur { $of }
practice-check = Vérifier
practice-next = Suite
practice-end = Voir votre résultat
practice-skip = Passer celui-ci
practice-wrong-last = Ce n’est pas cela. Regardez comment on le calcule.
practice-once-more = Vous avez encore un essai.
practice-right-is = La réponse est : { $answer }
practice-from = Ces fiches viennent de { $site }.
practice-stop = Arrêter cette séance
practice-stop-hint = Ce que vous y avez fait est perdu. Pour revenir plus tard, quittez simplement la page : elle vous attend.
practice-leave = Arrêter et abandonner
practice-order-hint = Mettez-les en ordre. La première étape vient en premier.
practice-up = Monter
practice-down = Descendre
practice-up-of = Monter : { $what }
practice-down-of = Descendre : { $what }
practice-drawing = Un gobelet avec { $dose } de produit, une graduation fait { $step }. À côté, un réservoir de { $tank } rempli à { $total }. La couche au fond du réservoir est le produit, 1 part pour { $ratio } parts d’eau.
practice-drawing-cup = Produit
practice-picture-ratio = C’est 1 pour { $ratio }. La couche au fond du réservoir est tout le produit qu’il contient.
practice-picture-half = Une graduation de votre gobelet fait { $step }. Une demi-graduation de moins donne 1 pour { $less }. Une demi-graduation de plus donne 1 pour { $more }.

# See the numbers
numbers-about = Changez un nombre et voyez ce que cela fait. Rien d’autre ne change.
numbers-mix = Rapport et réservoir
numbers-machine = Réservoir de
numbers-own = Mon propre nombre
numbers-tank = Contenance
numbers-level = Rempli à
numbers-parts = Rapport
numbers-parts-hint = Parts d’eau pour 1 part de produit. Tapez 64 ou 1:64.
numbers-usual = Rapports courants
numbers-slider = Glisser le rapport :
numbers-ratio = 1 pour { $n }
numbers-measure = Mesure
numbers-step = Une graduation du gobelet
numbers-none = Il n’y a pas encore d’image. Corrigez le nombre marqué plus haut.
numbers-to-scale = À la même échelle : le réservoir et le produit, chacun comme un cube vu de face. La fine couche au fond du réservoir est le même produit.
numbers-enlarged = Le gobelet de nouveau, en grand, avec ses graduations. La bande va d’une demi-graduation vers le haut et vers le bas.
numbers-count = { $n ->
    [one] La graduation la plus proche est { $n } graduation de { $step }, soit { $rounded }. Cela fait 1 pour { $ratio }.
   *[other] La graduation la plus proche est { $n } graduations de { $step }, soit { $rounded }. Cela fait 1 pour { $ratio }.
}
numbers-half = L’effet d’une demi-graduation
numbers-less = ½ graduation de moins
numbers-asked = Comme demandé
numbers-nearest = Au plus proche
numbers-more = ½ graduation de plus
numbers-column-pour = Vous versez
numbers-column-product = Produit
numbers-column-ratio = Rapport
numbers-column-off = Écart
numbers-drawing-scale = Un réservoir de { $tank } comme un cube large de { $tank_edge }, rempli à { $total }. À côté, les { $dose } de produit qu’il contient, comme un cube large de { $dose_edge }. Les deux sont dessinés à la même échelle.
remark-numbers-coarse = Une demi-graduation de ce gobelet fait autant que tout le produit. Choisissez une mesure plus fine ou un réservoir plus plein.
numbers-film = Le film sur un sol
numbers-laid = Comment le fixer
numbers-laid-rate = Je sais combien je dépose
numbers-laid-setting = Par un réglage de débit
numbers-rate = Ce que vous déposez
numbers-setting = Réglage de
numbers-setting-of = { $machine }, réglage { $n }
numbers-flow = Débit
numbers-speed = Vitesse
numbers-path = Largeur
numbers-overlap = Recouvrement
numbers-film-scale = Un carreau vu de côté, et une feuille de papier à côté. La hauteur est dessinée { $times } fois plus grande que la largeur.
numbers-film-assumed = C’est le film tel qu’il est déposé, égal partout. Un vrai sol en a plus dans ses joints et ses creux. Une feuille de papier de bureau compte pour 0,1 mm d’épaisseur et un carreau pour 12 in ou 30 cm de largeur : usage courant, sans source. Le poids est celui de l’eau à 20 °C, 998 g par litre.
numbers-tile-is = carreau large de { $edge }
numbers-paper = papier
numbers-drawing-film = Un carreau large de { $edge } vu de côté, avec un film épais de { $thick } dessus. À côté, une feuille de papier épaisse de { $paper }. La hauteur est dessinée { $times } fois plus grande que la largeur.
figure-numbers-total = Solution en réservoir
figure-numbers-water = Eau dedans
figure-numbers-dose = Produit dedans
figure-numbers-tank-edge = Côté du réservoir comme cube
figure-numbers-dose-edge = Côté du produit comme cube
figure-numbers-rate = Déposé
figure-numbers-thickness = Épaisseur de ce film
figure-numbers-weight = Son poids
figure-numbers-tile = Sur un carreau
figure-numbers-sheets = Autant de feuilles de papier
formula-film-mass = Poids w du film sur chaque surface, de ce qui est déposé et de la densité ρ de l’eau

# Pictures beside a task
practice-picture-tanks = La couche au fond est tout le produit du réservoir. Là où vous n’en voyez pas, elle est plus fine qu’un trait.
practice-picture-rates = Une barre pour chaque réglage, par son numéro. Le bon est le plus petit qui finit dans la bande. Quand aucune barre n’y finit, la réponse est « Aucun d’eux ».
practice-picture-mix = Toute la solution pour la zone, en une bande.
practice-picture-strip = La solution du début à la fin. Un trait avec un numéro est là où vous remplissez le réservoir.
practice-picture-range = Ce que permet l’étiquette, de rien à plus. Un trait en tirets est ce que demande l’exercice.
practice-picture-range-parts = C’est 1 part de produit et { $n } parts d’eau, { $all } parts en tout.
practice-picture-scales = Les deux côtés montrent la même quantité.
practice-picture-wear = De quoi l’étiquette avertit, et ce que vous portez contre cela.
practice-picture-shaken = Peu moussant : après une minute, la mousse est au trait en tirets ou dessous, et elle est tombée à un tiers ou moins. Usage courant, sans source.
practice-picture-foam = La mousse ne doit pas entrer dans une aspiration. Testez ce que personne n’a testé.
practice-state-before = avant
practice-state-topped = complété
practice-state-found = trouvé
practice-state-drained = vidé
practice-state-rescued = corrigé
practice-drawing-state = { $when } : { $mix }, dont { $product } de produit
practice-drawing-tanks = Un réservoir de { $tank }, pas à pas. { $states }.
practice-drawing-mix = Une bande de { $total } de solution pour une zone.
practice-drawing-strip = { $n ->
    [one] Une bande de { $total } de solution, par zone : { $areas }. Il faut { $n } remplissage du réservoir.
   *[other] Une bande de { $total } de solution, par zone : { $areas }. Il faut { $n } remplissages du réservoir.
}
practice-drawing-range = Une barre de ce que permet l’étiquette : { $range }.
practice-drawing-range-asked = Une barre de ce que permet l’étiquette : { $range }. L’exercice demande { $asked }.
practice-drawing-scales = Un trait avec deux échelles : en haut { $from }, en bas { $to }.
practice-drawing-bottles = Deux bouteilles avec une barre entre elles : { $a } et { $b }.
practice-drawing-shaken = Deux bouteilles après le secouage. Tout de suite, la mousse monte à { $first }, après une minute elle est à { $later }. Un trait en tirets est à { $limit }.
practice-drawing-foam-none = Un réservoir sans mousse.
practice-drawing-foam-no-vacuum = Un réservoir qui peut mousser, et pas d’aspiration au-dessus.
practice-drawing-foam-unknown = Un réservoir qui mousse peut-être. Le tuyau au-dessus mène au moteur de l’aspiration.
practice-drawing-foam-vacuum = Un réservoir plein de mousse. La mousse monte par le tuyau jusqu’au moteur de l’aspiration.
practice-foam-at-once = aussitôt
practice-foam-after = après 1 min
practice-foam-motor = moteur
practice-foam-tank = réservoir
practice-ticket-should = Il faudrait lire : { $line }

# The result
practice-result = Votre résultat
practice-tries-first = Juste tout de suite : { $n } sur { $of }
practice-tries-second = Juste au second essai : { $n } sur { $of }
practice-tries-later = Juste plus tard : { $n } sur { $of }
practice-tries-never = Pas juste : { $n } sur { $of }
practice-tries-open = Passé : { $n } sur { $of }
practice-roads = À revoir
practice-hand-in = Le rendre
practice-initials = Vos initiales
practice-initials-hint = Seulement si vous rendez votre résultat. Quatre lettres au plus, pas de nom complet.
practice-code = Votre code
practice-code-qr = Code de votre résultat, à scanner
practice-code-save = Enregistrer le code en fichier
practice-code-holds = Le code contient vos initiales, le jour ({ $date }) et le résultat de chaque exercice. Rien n’est envoyé. Montrez-le ou transmettez-le vous-même.
practice-finish = Fini. Nouveaux exercices
practice-copy = Copier
practice-copied = Copié.
practice-marked = Il est sélectionné. Copiez-le au clavier.

# A session that a link brings
practice-offer = Une séance pour vous
practice-offer-hint = Ce lien apporte une séance. Commencez-la ou laissez-la d’abord : ensuite, le reste des Exercices est de nouveau ici. Votre propre site reste tel quel.
practice-offer-same = Vous avez commencé cette séance. Vous pouvez la continuer.
practice-offer-other = Vous avez une autre séance en cours. Si vous commencez celle-ci, l’autre est perdue.
practice-offer-go-on = Continuer où vous étiez
practice-offer-begin = Commencer cette séance
practice-offer-leave = La laisser
practice-link-content = Il s’ouvre, mais ce qu’il contient n’est pas une séance.

# Handing out
practice-hand-out-heading = Distribuer une séance
practice-hand-out-hint = Choisissez des sujets, puis créez la séance. Tous ceux qui scannent son code ont les mêmes exercices, sans réseau.
practice-make = Distribuer cette séance
practice-given-heading = La séance
practice-given = Quelle séance
practice-given-one = Numéro de groupe { $seed }, { $level }, exercices : { $n } ({ $check })
practice-smaller = Un code n’a pas la place pour toutes les fiches. Cette séance utilise les premières de chaque liste.
practice-qr = Code à scanner avec un téléphone : il ouvre cette séance
practice-scan = Scannez pour ouvrir cette séance. Ouvrez d’abord une fois la page sur chaque appareil, pour que cela marche sans réseau.
practice-link = Le lien
practice-paper = La séance sur papier
practice-tasks-print = Imprimer les exercices
practice-key-print = Imprimer le corrigé
practice-both-print = Tout imprimer
practice-paper-tasks = Exercices, numéro de groupe { $seed }, séance { $check }
practice-paper-key = Corrigé, numéro de groupe { $seed }, séance { $check }
practice-paper-key-of = { $n ->
    [one] La réponse de { $n } exercice. Ce qui s’y arrondit pour la mesure est juste aussi.
   *[other] Les réponses de { $n } exercices. Ce qui s’y arrondit pour la mesure est juste aussi.
}
practice-paper-initials = Initiales
practice-paper-date = Date
practice-paper-order = Écrivez 1, 2, 3 et ainsi de suite dans les cases.

# What a class did
class-heading = Prendre les codes de votre groupe
class-codes = Codes, un par ligne
class-codes-hint = Collez ce que votre équipe vous a envoyé ou a scanné pour vous.
class-take = Prendre ces codes
class-take-sure = Prendre quand même ce qui faisait question
class-open = Ou ouvrir un fichier de codes
class-open-hint = Un fichier texte avec un code par ligne.
class-no-session = Il n’y a pas encore de séance. Distribuez-en d’abord une : ses résultats vont avec elle.
class-taken = { $n ->
    [one] { $n } code a été pris.
   *[other] { $n } codes ont été pris.
}
class-refused = { $n ->
    [one] { $n } ligne n’a pas été prise :
   *[other] { $n } lignes n’ont pas été prises :
}
class-summary = Ce que le groupe a fait
class-none = Il n’y a pas encore de résultats de cette séance.
class-by-topic = Par sujet
class-by-person = { $n ->
    [one] Par personne : { $n } personne. Le dernier résultat compte.
   *[other] Par personne : { $n } personnes. Le dernier résultat compte.
}
class-roads = Les fausses pistes habituelles
class-no-roads = Personne n’a pris une des fausses pistes habituelles.
class-column-topic = Sujet
class-column-asked = Réponses
class-column-first = Aussitôt
class-column-second = Second essai
class-column-right = Juste
class-column-share = Part juste
class-column-who = Initiales
class-column-date = Date
class-column-wrong = Pas juste
class-column-open = Passé
class-column-times = Fois
class-column-way = À enseigner
class-column-level = Niveau
class-column-until = Valable jusqu’au
class-shown = Qui a montré quoi
class-shown-hint = Un sujet compte quand tous ses exercices étaient justes, au premier ou au second essai, dans la dernière séance qui le demandait. C’est une habitude de formateurs, pas une règle avec une source. Ce n’est pas une habilitation : c’est vous qui dites qui peut travailler seul. On ne distingue les gens que par leurs initiales.
class-months = Valable combien de mois
class-months-wrong = Jusque-là, aucune fin n’est montrée.
class-until-unknown = Pas connu
class-lost = Perdu le { $day } par une réponse fausse
class-ran-out = Expiré. Son dernier jour était le { $day }
class-shown-by = Montré par { $who }
class-shown-nothing = { $who } n’a encore montré aucun sujet entier.
class-remove-warning = Le journal a { $n } résultats de { $who }. Les initiales y sont effacées pour de bon ; ce qui a été montré reste, sans être rattaché à personne.
class-remove-do = Effacer et retirer
class-remove-leave = Tout laisser tel quel
class-logged = Dans le journal : { $n }. Pas encore dans le journal : { $new }.
class-log = Mettre ces résultats au journal
class-log-hint = Dans le journal, un résultat est conservé pour de bon, avec son jour et jusqu’à quand il vaut, et il part avec les sauvegardes. Là aussi, les initiales peuvent être effacées.
class-remove = Retirer tout ce qui est de { $who } de cet appareil et du journal
class-keeping = Ce qui reste sur cet appareil
class-keeping-hint = Les résultats partent quand vous fermez la page, sauf si vous les conservez. Les codes ne font partie ni du journal ni d’une sauvegarde ; ce que vous mettez au journal, oui. Ce que vous retirez de cet appareil n’y est plus. Les copies que vous avez enregistrées ou transmises restent où elles sont.
class-keep = Conserver les résultats sur cet appareil
class-kept = Les résultats sont conservés sur cet appareil.
class-not-kept = Les résultats ne sont pas conservés.
class-save = Enregistrer tous les codes
class-erase = Retirer tous les résultats de l’appareil
class-remove-codes = Tous les résultats de { $who } partent de cet appareil. Ce que d’autres ont fait reste.
class-remove-off = Les retirer
class-erase-warning = { $n ->
    [one] { $n } résultat part de cet appareil. Ce que vous avez mis au journal y reste, et les fichiers que vous avez enregistrés aussi.
   *[other] { $n } résultats partent de cet appareil. Ce que vous avez mis au journal y reste, et les fichiers que vous avez enregistrés aussi.
}
class-erase-do = Tout retirer
class-erase-leave = Les laisser ici
class-gone = Ils ne sont plus sur cet appareil. Vous pouvez les remettre jusqu’à ce que vous quittiez cette partie.
class-put-back = Les remettre

# The first fill, step by step
first-fill = Premier remplissage
first-fill-about = Un guide vous mène à travers un remplissage sur cette page. Il vous montre chaque étape là où vous la ferez au travail.
first-fill-safe = Le guide ne remplit rien et ne met rien au journal. Seul compte ce que vous faites vous-même. Vous pouvez passer une étape, et arrêter quand vous voulez.
first-fill-begin = Faire le premier remplissage
first-fill-again = Le parcourir encore une fois
first-fill-resume = Continuer à l’étape { $n }
first-fill-runs = Il est en cours. Vous êtes à l’étape { $n } sur { $of }.
first-fill-link = C’est nouveau pour vous ? Laissez un guide vous mener à travers votre premier remplissage.
first-fill-link-resume = Continuer votre premier remplissage, étape { $n }
first-fill-at = Premier remplissage, étape { $n } sur { $of }
first-fill-told = { $at } : { $title }. { $standing }
first-fill-is-done = Fait
first-fill-not-done = À faire
first-fill-is-warned = Fait, avec un avertissement
first-fill-warned = Fait, avec un avertissement : { $warning }
first-fill-stopped = Pas encore fait. Le Dosage vous avertit : { $warning }
first-fill-escape = Pour revenir ici, touchez la ligne tout en haut ou appuyez sur la touche Échap.
first-fill-to = Aller à « { $control } »
first-fill-next = Suivante
first-fill-finish = Terminer
first-fill-skip = Passer cette étape
first-fill-back = Retour
first-fill-pause = Laisser pour l’instant
first-fill-close = Arrêter le guide
first-fill-put-away = Fermer
first-fill-ended = C’était votre premier remplissage
first-fill-ended-all = Vous avez parcouru toutes les étapes. Au travail, faites surveiller vos premiers remplissages par quelqu’un qui connaît le métier.
first-fill-ended-skipped = Vous avez passé ces étapes. Revenez-y, ou faites-vous montrer.
first-fill-ended-governs = L’étiquette, sa FDS, les règles de votre site et des personnes formées décident.

first-fill-wear = Mettez ce que demande l’étiquette
first-fill-wear-do = Faites-le avant d’ouvrir un bidon. Une éclaboussure peut blesser tout de suite vos yeux et votre peau. La page liste ce qu’il faut porter sous « { $control } ». L’étiquette et la FDS décident.
first-fill-wear-list = Pour { $product }, portez ceci : { $wear }
first-fill-wear-none = Aucun code de danger de { $product } ne vous demande de porter quelque chose. Suivez son étiquette, sa FDS et les règles de votre site.
first-fill-wear-unknown = La page ne connaît pas tous les dangers de { $product }. Lisez son étiquette et sa FDS, ou demandez.
first-fill-wear-on = Je le porte
first-fill-wear-read = J’ai lu l’étiquette
first-fill-wear-again = Vous avez mis l’équipement d’une autre étiquette. Regardez de nouveau l’étape 1 pour celle-ci.
first-fill-wear-again-go = Voir l’étape 1
first-fill-wear-lacks = Il n’y a pas encore de produit. Choisissez-en un à l’étape 3, puis revenez.
first-fill-wear-open = Cochez la case quand c’est fait.
first-fill-wear-done = Tout est prêt pour { $product }.

first-fill-machine = Choisissez votre machine
first-fill-machine-do = Regardez la machine à côté de vous. Choisissez-la sous « { $control } ». La page a besoin de son réservoir pour savoir combien d’eau y va.
first-fill-machine-lacks = La page ne sait pas combien contient le réservoir. Regardez sur sa plaque ou dans son manuel, ou demandez.
first-fill-machine-done = La page indique { $machine }, avec un réservoir de { $tank }. Est-ce la vôtre ? Sinon, choisissez-en une autre.

first-fill-product = Choisissez le produit et lisez son étiquette
first-fill-product-do = Prenez le bidon en main. Choisissez le même nom sous « Produit ». Comparez ensuite « Dilution sur l’étiquette » avec l’étiquette. Les deux doivent dire la même chose.
first-fill-product-locked = Le sol et sa consigne décident ici du produit. Prenez ce bidon en main. Vérifiez que son nom est celui de cette page. Sinon, demandez avant de verser.
first-fill-product-lacks = La page ne peut pas encore lire cette étiquette. Allez à « Dilution sur l’étiquette » et voyez ce qui y est dit.
first-fill-product-done = La page indique { $product }, avec « { $label } » sur l’étiquette. Est-ce ce que dit votre bidon ?

first-fill-floor = Choisissez le sol et voyez sa consigne
first-fill-floor-do = Choisissez le sol que vous allez laver. Certains produits abîment certains sols pour de bon. Si votre site a une consigne pour ce sol, c’est elle qui compte.
first-fill-floor-locked = Choisissez le sol que vous allez laver. Votre site a une consigne pour ce sol. La page remplit selon cette consigne et aucune autre.
first-fill-floor-lacks = Il n’y a pas encore de sol. Demandez quel sol c’est et ce qui peut aller dessus.
first-fill-floor-done = La page indique { $floor }.
first-fill-floor-standard = Sa consigne est { $standard }.
first-fill-floor-no-standard = Aucune consigne n’est en vigueur pour ce produit sur ce sol. L’étiquette décide.

first-fill-level = Jusqu’où remplir, et avec quoi mesurer
first-fill-level-do = Ne préparez que ce qu’il vous faut. Réglez le niveau sous « Remplir le réservoir à ». Choisissez ensuite le pichet ou la pompe à côté de votre robinet sous « Mesure au mur ».
first-fill-level-lacks = La page ne peut pas encore lire le niveau ou la mesure. Elle dit pourquoi sous le champ.
first-fill-level-done = Vous remplissez à { $level }. Votre mesure est celle-ci : { $measure }. Est-ce bien cela ?

first-fill-amount = Lisez la quantité
first-fill-amount-do = C’est la quantité de produit pour ce remplissage. Lisez-la à voix haute, avec son unité. Ne devinez jamais, et n’en ajoutez jamais un peu pour être sûr.
first-fill-amount-is = Votre quantité est { $amount }.
first-fill-amount-lacks = Il n’y a pas encore de quantité. La page dit ce qui manque là où elle serait.
first-fill-amount-stopped = Un avertissement est là où serait la quantité. Lisez-le et faites ce qu’il dit.
first-fill-amount-open = Dites maintenant pourquoi on met l’eau d’abord.
first-fill-amount-done = Vous avez la quantité, et vous savez pourquoi on met l’eau d’abord.
first-fill-why = Quand vous versez à la main, pourquoi met-on l’eau d’abord ?
first-fill-why-cheaper = Le produit coûte moins ainsi.
first-fill-why-splash = Cela mousse et éclabousse moins.
first-fill-why-same = Cela ne change rien.
first-fill-why-right = Juste. L’eau qui tombe sur du produit fait de la mousse et peut vous gicler au visage. L’acide aussi va dans l’eau, jamais l’eau dans l’acide.
first-fill-why-wrong = Pas tout à fait. Pensez à de l’eau qui tombe fort sur un produit concentré. Choisissez de nouveau.

first-fill-record = Mettez-le au journal
first-fill-record-do = Au travail, vous touchez « { $control } » une fois le réservoir rempli. Ainsi, le poste suivant sait ce qu’il contient.
first-fill-record-training = N’est-ce qu’un exercice ? Alors passez cette étape. Ce que vous y mettez va dans le vrai journal et y reste. Vous pouvez dire plus tard que c’était noté par erreur, mais on le voit encore.
first-fill-record-lacks = Il n’y a pas encore de quantité à mettre au journal.
first-fill-record-stopped = Un avertissement l’empêche, donc rien ne peut être mis au journal ici.
first-fill-record-open = Vous n’avez mis aucun remplissage au journal depuis le début.
first-fill-record-done = Votre remplissage est au journal.

first-fill-shift = À la fin du poste
first-fill-shift-do = L’eau sale laissée dans un réservoir sent mauvais et fait pousser des microbes. Faites ces cinq choses chaque fois, dans cet ordre. Cochez-les ensuite sous « { $control } » dans le Journal.
first-fill-shift-drain = Videz les deux réservoirs là où l’eau sale peut aller.
first-fill-shift-rinse = Rincez-les à l’eau claire.
first-fill-shift-filters = Nettoyez les filtres, pour que l’aspiration ait de l’air.
first-fill-shift-brush = Nettoyez le sac à débris ou la brosse.
first-fill-shift-squeegee = Essuyez la raclette, pour qu’elle ne laisse pas de traînées.
first-fill-shift-lacks = Aucun remplissage de cette machine n’est au journal aujourd’hui, donc il n’y a rien à cocher. Lisez les cinq choses.
first-fill-shift-open = Encore à faire : { $tasks }.
first-fill-shift-done = Les cinq sont cochées.
