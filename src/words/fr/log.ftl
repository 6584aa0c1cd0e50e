# French, in Fluent syntax: what Log says, and the record below Fill’s answer. Terms as in fill.ftl.
# No native reader has checked this file yet.

log-recording = L’enregistrement
record-fill = Mettre au journal
record-fill-rests = Déjà au journal
record-fill-waits = Pas encore conservé
log-recorded = Mis au journal à { $time }, numéro { $number }.
log-recorded-other = { $machine }, { $day } : mis au journal à { $time }, numéro { $number }.
log-not-recorded = Pas mis au journal : { $why }
log-correct-it = Le corriger
log-stopped = Vous ne pouvez pas mettre ce plan au journal : un avertissement s’y oppose.
log-stopped-way = Notez ce que vous avez vraiment fait
log-details = Ajoutez à l’enregistrement avant de toucher le bouton
log-details-next = Ce remplissage est au journal. Ce que vous tapez maintenant va avec le suivant : { $product } dans { $machine }. Pour compléter celui qui est au journal, touchez « Le corriger ».
log-details-for = Cela va avec le prochain enregistrement : { $product } dans { $machine }.
log-details-hint = Tout cela peut rester vide. C’est effacé une fois mis au journal, et quand vous passez ensuite à une autre machine, un autre produit ou un autre sol ; vos initiales restent sur cet appareil.
log-who = Vos initiales
log-who-hint = Deux ou trois lettres. Elles peuvent être effacées du journal plus tard.
log-areas = Zones pour ce remplissage
log-area = Ajouter une zone
log-area-more = Choisissez une zone
log-measured = Concentré que vous avez mesuré
log-measured-hint = Laissez vide si vous avez pris ce que disait la page et n’avez pas mesuré.
log-no-volume = Cette dose n’est pas un volume. Ce que vous avez pesé ou compté va dans les notes.
log-scale = Ce que dit la lecture
log-scale-none = Rien n’a été lu
log-scale-active = Substance active
log-scale-ratio = Concentration de la solution
log-reading = Lecture
log-reading-take = Prendre la lecture { $reading }
log-deviation = Avez-vous fait autrement ?
log-deviation-none = Non, comme dit la page
log-deviation-more = Plus de concentré
log-deviation-less = Moins de concentré
log-deviation-other-product = Un autre produit
log-deviation-other = Autre chose
log-other-product = Quel produit a été mis ?
log-other-unlisted = Aucun de ceux-ci : je le nomme plus bas
log-planned-other = prévu : { $product }, { $dose }
log-other-rest = Le remplissage n’est pas compté pour { $product }. Le réservoir contient peut-être un reste d’un autre produit : ce reste et ce que vous versez ne doivent peut-être pas se mélanger.
log-other-way = Voyez Précautions avant de remplir
log-reason = Pourquoi autrement
log-notes = Notes
log-left-undone = Pas fait le { $day }, { $machine } : { $tasks }. Faites-le avant de remplir.
log-left-undone-unticked = Pas fait le { $day }, { $machine } : personne n’a rien coché après le dernier remplissage. Regardez la machine avant de remplir.
log-left-way = Cochez-le sous « Fin de poste »
remark-log-more = Vous avez mesuré { $measured }, plus que prévu ({ $planned }). Mettez-le au journal si c’est bien ce que vous avez versé.
remark-log-more-title = Plus que prévu
remark-log-less = Vous avez mesuré { $measured }, moins que prévu ({ $planned }). Mettez-le au journal si c’est bien ce que vous avez versé.
remark-log-less-title = Moins que prévu
remark-log-over-label = Vous avez mesuré { $measured }. L’étiquette l’emporte pour ce remplissage : pas plus de { $most }. Mettez au journal ce qui a été versé, et corrigez le mélange avant de laver.
remark-log-over-label-title = Trop : hors de l’étiquette
remark-log-under-label = Vous avez mesuré { $measured }. L’étiquette l’emporte pour ce remplissage : pas moins de { $least }. Mettez au journal ce qui a été versé, et corrigez le mélange avant de laver.
remark-log-under-label-title = Trop peu : hors de l’étiquette
remark-log-under-minimum = Vous avez mesuré { $measured }. Le minimum légal l’emporte pour ce remplissage : pas moins de { $least }. Mettez au journal ce qui a été versé, et corrigez le mélange avant de laver.
remark-log-under-minimum-title = Trop peu : sous le minimum
remark-log-over-standard = Vous avez mesuré { $measured }. Votre consigne l’emporte pour ce remplissage : pas plus de { $most }. Mettez au journal ce qui a été versé, et corrigez le mélange avant de laver.
remark-log-over-standard-title = Trop : hors de votre consigne
remark-log-under-standard = Vous avez mesuré { $measured }. Votre consigne l’emporte pour ce remplissage : pas moins de { $least }. Mettez au journal ce qui a été versé, et corrigez le mélange avant de laver.
remark-log-under-standard-title = Trop peu : hors de votre consigne
remark-log-over-machine = Vous avez mesuré { $measured }. La limite de la machine l’emporte pour ce remplissage : pas plus de { $most }. Mettez au journal ce qui a été versé, et corrigez le mélange avant de laver.
remark-log-over-machine-title = Trop : hors de la limite de la machine
remark-log-under-machine = Vous avez mesuré { $measured }. La limite de la machine l’emporte pour ce remplissage : pas moins de { $least }. Mettez au journal ce qui a été versé, et corrigez le mélange avant de laver.
remark-log-under-machine-title = Trop peu : hors de la limite de la machine
remark-log-over-tank = Vous notez { $level }. Le réservoir de cette machine contient { $tank }.
remark-log-over-tank-title = Plus que ne contient le réservoir
log-lack-reason = Dites pourquoi vous avez fait autrement.
log-lack-why = Dites pourquoi vous le corrigez.
log-lack-product = Choisissez le produit.
log-lack-scale = Choisissez ce que dit la lecture.
log-lack-nothing = Écrivez au moins une quantité, ou une note.
log-lack-day = Ce n’est pas un jour.
log-lack-time = Dites à quelle heure c’était, par exemple 06:30.
log-lack-later = Cette heure n’est pas encore venue.
log-not-kept = { $n ->
    [one] { $n } enregistrement n’est pas encore conservé
   *[other] { $n } enregistrements ne sont pas encore conservés
 }
log-again = Réessayer
log-let-go = L’abandonner
log-waiting-save = En faire un fichier
log-denied = Le navigateur ne conserve rien pour cette page. C’est le cas dans une fenêtre privée, ou quand le stockage est bloqué. Enregistrez-le dans un fichier, ou ouvrez la page dans une fenêtre ordinaire.
log-full = L’appareil n’a plus de place pour cela. Enregistrez-le dans un fichier, faites de la place sur l’appareil, puis réessayez.
log-newer = Une version plus récente de la page conserve le journal sur cet appareil. Rechargez la page.
log-blocked = Un autre onglet, avec une version plus ancienne de la page, occupe le journal. Fermez cet onglet, puis réessayez.
log-unreadable = Le navigateur ne peut pas lire le journal qu’il conserve. Enregistrez dans un fichier ce qui est montré ici, et ouvrez votre dernière sauvegarde.
log-no-random = Le navigateur ne donne pas de nombres aléatoires, l’enregistrement ne peut donc pas être scellé. Enregistrez-le dans un fichier, ou prenez un autre navigateur.
log-failed = Le navigateur ne l’a pas conservé : { $text }. Réessayez, ou enregistrez-le dans un fichier.
log-heading = Qu’a-t-on rempli ?
log-parts = Parties du journal
log-fills = Remplissages
log-shift = Fin de poste
log-questions = Questions
log-keep = Sauvegardes
log-opening = Le journal s’ouvre.
log-opening-of = Le journal s’ouvre. Remplissages : { $done } sur { $of }.
log-shut = Le journal ne s’ouvre pas
log-shut-do = Vous pouvez quand même mettre un remplissage au journal : il reste à l’écran jusqu’à ce qu’il soit conservé ou enregistré dans un fichier.
log-count = { $n ->
    [one] { $n } remplissage dans le journal. Cet appareil écrit sous le nom { $device }.
   *[other] { $n } remplissages dans le journal. Cet appareil écrit sous le nom { $device }.
 }
log-count-struck = { $n ->
    [one] { $n } d’entre eux a été noté par erreur et ne compte nulle part.
   *[other] { $n } d’entre eux ont été notés par erreur et ne comptent nulle part.
 }
log-backup-last = { $n ->
    [one] Dernière sauvegarde : { $when } ; { $n } enregistrement ajouté depuis.
   *[other] Dernière sauvegarde : { $when } ; { $n } enregistrements ajoutés depuis.
 }
remark-log-backup-none = { $n ->
    [one] Il n’y a pas de sauvegarde. Si cet appareil est perdu, { $n } enregistrement est perdu avec lui.
   *[other] Il n’y a pas de sauvegarde. Si cet appareil est perdu, { $n } enregistrements sont perdus avec lui.
 }
remark-log-backup-none-title = Sauvegardez
remark-log-backup-old = { $n ->
    [one] La dernière sauvegarde a { $days } jours. Si cet appareil est perdu, { $n } enregistrement est perdu avec lui.
   *[other] La dernière sauvegarde a { $days } jours. Si cet appareil est perdu, { $n } enregistrements sont perdus avec lui.
 }
remark-log-backup-old-title = Sauvegardez
log-save-now = Sauvegarder maintenant
log-lost = Enregistrements manquants
log-lost-line = { $device } : numéros { $from } à { $to }
log-lost-do = Ils étaient ici auparavant. Le navigateur les a perdus. Ouvrez votre dernière sauvegarde : ce qu’elle contient revient.
log-clock-back = { $n ->
    [one] L’horloge de cet appareil a reculé avant { $n } enregistrement. Son heure est peut-être fausse ; rien n’est perdu.
   *[other] L’horloge de cet appareil a reculé avant { $n } enregistrements. Leurs heures sont peut-être fausses ; rien n’est perdu.
 }
log-astray = { $n ->
    [one] { $n } correction nomme un remplissage qui n’est pas dans ce journal. Ouvrez la sauvegarde qui a ce remplissage.
   *[other] { $n } corrections nomment des remplissages qui ne sont pas dans ce journal. Ouvrez la sauvegarde qui a ces remplissages.
 }
log-seek = Quels remplissages
seek-month = Mois
seek-product = Produit
seek-machine = Machine
seek-area = Zone
seek-standard = Consigne
seek-who = Qui
seek-any = Tout
seek-all = Tout montrer
log-shown = Remplissages : { $shown } sur { $n }
log-table = Remplissages, les derniers d’abord
log-caption = { $n ->
    [one] { $n } remplissage, les derniers d’abord
   *[other] { $n } remplissages, les derniers d’abord
 }
log-keys = Avec les flèches et les touches Page préc., Page suiv., Début et Fin, allez d’un remplissage à l’autre. Appuyez sur Entrée pour en déplier un.
log-empty = Aucun remplissage n’est encore au journal. Dosage a un bouton pour cela sous la quantité.
log-none-found = Aucun remplissage ne correspond. Choisissez moins, ou touchez « Tout montrer ».
log-column-when = Quand
log-column-product = Produit
log-column-planned = Prévu
log-column-measured = Mesuré
log-column-machine = Machine
log-column-who = Qui
log-struck = par erreur
log-contested = deux de ce numéro
log-corrected = corrigé
log-title = Numéro { $number }, { $when } : { $product }, { $machine }
log-history = Ce qui a été écrit, dans l’ordre
log-past = { $kind }, { $number }, { $when }.
log-written-by = Écrit par { $who }.
log-kind-fill = Remplissage
log-kind-correction = Correction
log-kind-erasure = Effacement
log-kind-lesson = Exercice
log-kind-unsaid = Enregistrement
log-part-by = Qui l’a écrit
log-part-who = Qui l’a fait
log-part-reason = Pourquoi autrement
log-part-notes = Notes
log-part-why = Pourquoi c’est corrigé
log-erased-parts = Effacé
log-blanked = Effacé sur demande
log-altered-text = Pas ce qui a été écrit
log-nothing = Rien
log-struck-field = Compte
log-is-struck = Non : noté par erreur
log-not-struck = Oui
log-standard = Consigne
log-standard-of = { $name }, version { $version }
log-product = Produit
log-machine = Machine
log-floor = Sol
log-at = Fait le
log-day = Jour du remplissage
log-time = Heure du remplissage
log-station = Comment vous appelez cet appareil
log-station-hint = Les enregistrements que vous écrivez ici le disent, par exemple « Station de remplissage, bibliothèque ».
log-this-device = Cet appareil
log-done-by = Qui l’a fait
log-done-by-hint = Initiales
log-concentrate = Concentré, comme prévu
log-water = Eau, comme prévu
log-level = Rempli à
log-end-of-shift = Fin du poste
log-unknown-record = Pas connu
log-choose-product = Choisissez le produit
log-as = L’enregistrement dit que { $who } l’a fait.
log-new-day = C’est un nouveau jour. Qui êtes-vous ?
log-still = Je suis encore { $who }
log-other-person = Quelqu’un d’autre
log-correct = Corriger cet enregistrement
log-by-hand = Noter un remplissage à la main
log-hand-heading = Un remplissage à la main
log-hand-hint = Écrivez ce qui a vraiment été fait. Laissez le jour et l’heure vides si c’était à l’instant.
log-hand-record = Le mettre au journal
log-leave-form = Fermer sans garder
log-correct-heading = Corriger un enregistrement
log-correct-hint = Le premier enregistrement reste comme il était. Ce que vous changez ici est écrit dessous, avec vos initiales et pourquoi. Un texte vidé reste comme il était ; seul l’effacement en retire un.
log-why = Pourquoi vous le corrigez
log-nothing-new = Rien n’est encore changé.
log-correct-save = Garder la correction
log-strike = Noté par erreur
log-unstrike = Il compte quand même
log-strike-hint = Un remplissage noté par erreur reste dans le journal et n’est compté nulle part.
log-left = Pas fait, ou pas coché
log-left-line = { $machine }, { $day } : { $tasks }
log-left-line-unticked = { $machine }, { $day } : personne n’a rien coché après le dernier remplissage
log-shift-today = Remplies ces dernières 24 heures
log-shift-hint = Cochez chaque machine dans cet ordre. C’est gardé aussitôt, avec le dernier remplissage de la machine.
log-shift-none = Aucune machine n’a été remplie au cours des dernières 24 heures.
log-shift-late = Avant, pas coché
log-shift-late-hint = Elles ont été remplies au cours des 7 derniers jours et il reste quelque chose à faire. Cochez ce qui est fait depuis.
log-shift-machine = { $n ->
    [one] { $machine } : { $n } remplissage, à { $time }
   *[other] { $machine } : { $n } remplissages, le dernier à { $time }
 }
log-task-drain = Réservoirs vidés
log-task-rinse = Réservoirs rincés
log-task-filters = Filtres nettoyés
log-task-brush = Sac à débris ou brosse nettoyés
log-task-squeegee = Raclette essuyée
log-state-done = Fait
log-state-not-done = Pas fait
log-state-not-asked = Pas coché
log-by = Compter par
log-by-product = Produit
log-by-machine = Machine
log-by-area = Zone
log-by-month = Mois
log-by-who = Qui
log-by-standard = Consigne
log-unnamed = Pas nommé
log-uncounted = Remplissages non comptés ici : { $n } sur { $of }.
log-column-what = De quoi
log-column-fills = Pleins
log-column-used = Utilisé
log-column-off = En plus ou moins
log-column-share = En pour cent
log-column-otherwise = Autrement, pas fait, notes
log-column-compared-planned = Prévu, des mesurés
log-column-compared = Mesuré
log-column-uncounted = Pas compté
log-column-number = Numéro
log-column-ratio = Mesuré sur prévu
log-column-range = Écart au précédent
log-column-stands-out = Ressort
log-column-price = Prix
log-column-cost = Coût
log-column-left = Reste
log-column-daily = Par jour
log-column-lasts = Dure
log-column-recipe = Recette
log-column-readings = Lectures
log-column-mean = Moyenne
log-column-week = Écart par semaine
log-column-doubt = Doute
log-column-says = Ce que cela dit
log-column-task = Tâche
log-column-left-undone = Pas fait
log-column-water = Eau
ask-use = Combien a été utilisé ?
ask-use-picture = Concentré utilisé.
ask-use-legend = La barre est ce qui a été utilisé ; le trait est ce qui était prévu.
ask-use-table = Consommation, comparée au plan
remark-log-use-none = Aucun remplissage n’a une quantité qu’on puisse additionner.
remark-log-use-planned = { $fills ->
    [one] { $used } selon le plan, pour { $fills } remplissage. Personne n’a mesuré : c’est donc ce qui était prévu, pas ce qui a été versé.
   *[other] { $used } selon le plan, pour { $fills } remplissages. Personne n’a mesuré : c’est donc ce qui était prévu, pas ce qui a été versé.
 }
remark-log-use-even = { $used } en { $fills } remplissages. Ceux qui ont été mesurés ({ $measured }) ont pris ce qui était prévu.
remark-log-use-over = { $used } en { $fills } remplissages. Ceux qui ont été mesurés ({ $measured }) ont pris { $off } de plus que prévu : { $share } de trop.
remark-log-use-under = { $used } en { $fills } remplissages. Ceux qui ont été mesurés ({ $measured }) ont pris { $off } de moins que prévu : { $share } trop peu.
remark-log-assumed = { $n ->
    [one] { $n } remplissage n’a pas été mesuré et compte comme prévu.
   *[other] { $n } remplissages n’ont pas été mesurés et comptent comme prévu.
 }
remark-log-shared = { $n ->
    [one] { $n } fois, un remplissage était pour plusieurs zones. Chacune le reçoit en entier : la consommation par zone est donc un maximum.
   *[other] { $n } fois, un remplissage était pour plusieurs zones. Chacune le reçoit en entier : la consommation par zone est donc un maximum.
 }
ask-doses = Doses comme prévu ?
ask-doses-picture = Mesuré sur prévu, remplissage par remplissage, avec ses limites.
ask-doses-values = Mesuré sur prévu
ask-doses-ranges = Écart au remplissage précédent
ask-doses-legend = Trait fin : la moyenne. Traits coupés : les limites. Un anneau avec un numéro ressort ; le tableau dit pourquoi.
ask-doses-table = Les remplissages du graphique
ask-constant = { $symbol } = { $value }
remark-log-doses-high = En moyenne, ils ont reçu { $mean } du plan : trop, remplissage après remplissage. Même s’ils varient de façon régulière, ce n’est pas bon.
remark-log-doses-low = En moyenne, ils ont reçu { $mean } du plan : trop peu, remplissage après remplissage. Même s’ils varient de façon régulière, ce n’est pas bon.
remark-log-doses-none = Aucun remplissage n’a à la fois une quantité prévue et une mesurée.
remark-log-doses = Sur { $known } remplissages mesurés, à un dixième du plan au plus : { $within }. Au-dessus : { $over }. Au-dessous : { $under }.
remark-log-chart-few = Il faut { $fewest } remplissages mesurés pour un graphique ; il y en a { $n }.
remark-log-chart-steady = Des { $n } derniers, aucun ne ressort : ils varient comme d’habitude.
remark-log-chart-out = Remplissages qui ressortent parmi les { $n } derniers : { $out }. Demandez ce qui était différent. { $run } de suite d’un même côté de la moyenne ressortent aussi.
remark-log-chart-pulled = Des remplissages hors des limites tirent la moyenne vers eux. Regardez d’abord ceux-là : corrigez ce qui a été mal écrit.
remark-log-chart-estimate = Ces limites sont une estimation : elles viennent de { $n } valeurs seulement.
control-beyond = Hors des limites
control-jump = Un saut depuis le remplissage précédent
control-run = Huit ou plus d’un même côté de la moyenne
ask-cost = Quel a été le coût ?
ask-cost-picture = Coût par produit.
ask-cost-table = Coût par produit
remark-log-cost-none = Aucun remplissage n’a à la fois une quantité et un prix. Les prix sont avec les produits, sous Site.
remark-log-cost = { $fills ->
    [one] Le coût de { $fills } remplissage, aux prix d’aujourd’hui. Comme prévu, non mesurés : { $assumed }.
   *[other] Le coût de { $fills } remplissages, aux prix d’aujourd’hui. Comme prévu, non mesurés : { $assumed }.
 }
remark-log-unpriced = Aucun prix n’est connu pour { $products } ; ce n’est pas dans le total.
remark-log-water-free = Aucun prix de l’eau n’est connu ; l’eau n’est pas dans le total.
ask-stock = Combien de temps dure le stock ?
ask-stock-picture = Jours jusqu’à ce que l’étagère soit vide.
ask-stock-legend = La barre est la durée du stock ; le trait est la durée d’une livraison.
ask-stock-table = Stock par produit
ask-days = { $n ->
    [one] { $n } jour
   *[other] { $n } jours
 }
stock-count = Contenants de { $product } sur l’étagère
stock-day = Jour où { $product } a été compté
stock-no-day = Choisissez le jour où vous avez compté : aujourd’hui ou avant.
stock-no-container = Le site ne dit pas ce que contient un contenant.
stock-not-counted = Pas encore compté
remark-log-stock-none = Comptez ce qu’il y a sur l’étagère et tapez le nombre ici, pour voir combien de temps cela dure.
remark-log-stock = { $days ->
    [one] { $product } s’épuise en premier, dans environ { $days } jour. C’est une estimation, à { $daily } par jour : la moyenne des 90 derniers jours, ou depuis le premier remplissage de ces jours-là.
   *[other] { $product } s’épuise en premier, dans environ { $days } jours. C’est une estimation, à { $daily } par jour : la moyenne des 90 derniers jours, ou depuis le premier remplissage de ces jours-là.
 }
remark-log-stock-late = { $product } s’épuise avant que vienne une livraison commandée aujourd’hui. Commandez maintenant.
log-no-use = Consommation pas encore connue
log-products = Plus d’un produit
ask-drift = Lectures qui dérivent ?
ask-drift-picture = { $n } lectures de { $product } avec leur droite et son doute.
ask-drift-legend = Trait coupé : comment changent les lectures. Bande : ce que peut être la pente.
ask-drift-table = Lectures par recette
ask-drift-few = Trop peu : il en faut { $n }, à plusieurs moments
ask-drift-no = Pas de changement net
ask-drift-rises = Monte
ask-drift-falls = Baisse
remark-log-drift-few = Il faut { $fewest } lectures d’une même recette, à plusieurs moments, pour voir un changement.
remark-log-drift-steady = { $product } : { $n } lectures, de moyenne { $mean }, ne montrent pas de changement net. Une semaine les change de { $week }, plus ou moins { $doubt }.
remark-log-drift-rises = { $product } : { $n } lectures, de moyenne { $mean }, montent de { $week } par semaine, plus ou moins { $doubt }.
remark-log-drift-falls = { $product } : { $n } lectures, de moyenne { $mean }, baissent de { $week } par semaine, plus ou moins { $doubt }.
log-too-few-readings = Trop peu de lectures
log-mixed-readings = Lectures de plus d’une recette
ask-undone = Tâches non faites ?
ask-undone-picture = Combien de fois chaque tâche n’a pas été faite.
ask-undone-times = { $n ->
    [one] { $n } fois
   *[other] { $n } fois
 }
ask-undone-table = Tâches de fin de poste
ask-undone-shifts = Postes où quelque chose n’a pas été fait, les derniers d’abord
ask-undone-unticked = Postes que personne n’a cochés, les derniers d’abord
ask-undone-more = Plus anciens, non listés : { $n }.
remark-log-undone-unasked = Aucun poste n’a été coché. Postes que personne n’a cochés : { $unticked }.
remark-log-undone-none = { $n ->
    [one] Dans { $n } poste coché, tout a été fait. Postes que personne n’a cochés : { $unticked }.
   *[other] Dans { $n } postes cochés, tout a été fait. Postes que personne n’a cochés : { $unticked }.
 }
remark-log-undone-part = Postes cochés : { $n }. Cochés en partie : { $missed }. Postes que personne n’a cochés : { $unticked }.
remark-log-undone = Postes cochés : { $n }. Avec quelque chose de pas fait : { $missed }. Le plus souvent pas fait : { $task }, { $times } sur { $n }. Postes que personne n’a cochés : { $unticked }.
figure-log-used = Concentré utilisé
figure-log-planned = Prévu, des remplissages mesurés
figure-log-measured = Mesuré, des mêmes remplissages
figure-log-centre = Moyenne
figure-log-lower = Limite basse
figure-log-upper = Limite haute
figure-log-range = Écart moyen
figure-log-range-upper = Limite d’un écart
figure-log-cost = Coût
figure-log-cost-concentrate = Concentré
figure-log-cost-water = Eau
formula-log-share = Mesuré sur prévu, des remplissages qui ont les deux.
formula-log-cost = Concentré et eau à leurs prix.
formula-log-supply = Le stock divisé par la consommation moyenne d’un jour.
formula-log-drift = La pente de la droite par les lectures, pour une semaine.
formula-control-upper = Trois écarts types au-dessus de la moyenne, d’après l’écart moyen.
formula-control-lower = Trois au-dessous, et pas moins que rien.
formula-control-range = Le plus que vaut d’habitude un écart.
log-out = Enregistrer le journal
log-out-hint = Une sauvegarde contient chaque enregistrement avec son empreinte (hash). Elle s’ouvre sur tout appareil, autant de fois que vous voulez : rien ne vient deux fois.
log-save = Sauvegarder
log-csv = Faire un tableau
log-csv-hint = Le tableau se lit dans un tableur. On ne peut pas le rouvrir ici : seule une sauvegarde se rouvre.
log-in = Ouvrir une sauvegarde
log-open = Ouvrir un fichier
log-open-hint = Vous voyez d’abord ce qu’il apporterait. Rien n’est pris avant que vous le disiez.
log-file-too-big = Le fichier est plus grand que n’importe quel journal. Il n’a pas été lu.
log-reading-file = Le fichier est lu.
log-busy-opening = Lecture des remplissages : { $done } sur { $of }.
log-busy-reading = Lecture du fichier : { $done } sur { $of }.
log-busy-comparing = Comparaison : { $done } sur { $of }.
log-busy-writing = Écriture : { $done } sur { $of }.
log-busy-saving = Création du fichier : { $done } sur { $of }.
log-refused = Le fichier est refusé. Rien n’a été pris.
log-compared = Enregistrements dans le fichier : { $records }. Nouveaux : { $added }. Connus : { $known }.
log-file-broken = Le fichier n’est pas entier.
log-file-erases = { $n ->
    [one] { $n } texte d’ici a été effacé là-bas sur demande. Il est effacé ici aussi quand vous prenez le fichier.
   *[other] { $n } textes d’ici ont été effacés là-bas sur demande. Ils sont effacés ici aussi quand vous prenez le fichier.
 }
log-flaws = { $n ->
    [one] { $n } ligne n’est pas un enregistrement et est laissée de côté :
   *[other] { $n } lignes ne sont pas des enregistrements et sont laissées de côté :
 }
log-line = Ligne { $line } :
log-conflicts = { $n ->
    [one] { $n } numéro a deux enregistrements qui ne disent pas la même chose. Les deux sont gardés et montrés.
   *[other] { $n } numéros ont deux enregistrements qui ne disent pas la même chose. Les deux sont gardés et montrés.
 }
log-stock-all = Tous les remplissages comptent ici, quoi que vous ayez choisi plus haut : chaque machine puise à la même étagère.
log-erase-texts = Effacer ses textes
log-file-altered = Ici ou dans le fichier, ceux-ci ont été changés après avoir été écrits : { $records }. Celui qui est comme il a été écrit reste, et celui qui a été changé n’est pas pris.
log-measured-told = mesuré { $text }
log-conflict-table = Deux enregistrements d’un numéro
log-column-record = Enregistrement
log-column-one = L’un dit
log-column-other = L’autre dit
log-take = Prendre les nouveaux
log-take-broken = Le prendre quand même
log-leave = Le laisser
log-left-out = Rien n’a été pris.
log-taken-mended = Aucun enregistrement n’est nouveau. Ce qui différait a été corrigé d’après le fichier.
log-taken = { $n ->
    [one] { $n } enregistrement a été pris.
   *[other] { $n } enregistrements ont été pris.
 }
log-locked = Ouvrir un fichier et effacer se font sur un appareil libre. Libérez d’abord celui-ci sous Site.
log-chain = Journal entier ?
log-chain-hint = Chaque enregistrement porte une empreinte (hash) de celui d’avant. La vérification trouve un enregistrement changé, laissé de côté ou déplacé.
log-check = Vérifier tout
log-check-not-yet = Pas vérifié depuis l’ouverture de la page.
log-check-running = Vérification : { $done } sur { $of }.
log-check-whole = { $n ->
    [one] Entier : { $n } enregistrement en ordre.
   *[other] Entier : { $n } enregistrements en ordre.
 }
log-broken = La chaîne se rompt à l’enregistrement { $id }.
log-broken-file-do = Ses enregistrements après cet endroit ont peut-être été changés ou manquent. Demandez une copie entière à qui l’a fait avant de le prendre.
log-broken-do = N’effacez rien. Faites une sauvegarde du journal tel quel, dites-le à votre responsable, et ouvrez à côté une sauvegarde plus ancienne.
log-altered = L’enregistrement n’est pas ce qui a été écrit.
log-words-altered = Ce texte n’est pas ce qui a été écrit : { $part }.
log-words-gone = Ce texte a disparu, et rien ne dit qu’il a été effacé : { $part }.
log-missing = L’enregistrement manque, et des suivants sont là.
log-doubled = L’enregistrement est là deux fois.
log-forked = Un autre enregistrement a le même numéro.
log-moved = L’enregistrement est au mauvais endroit.
log-unlinked = Il ne va pas avec l’enregistrement d’avant.
log-replaced = C’était auparavant le dernier enregistrement, et il était autre.
log-heads = Le bout de chaque chaîne
log-heads-hint = Notez-les ou imprimez-les : ils montrent plus tard si des enregistrements du bout ont disparu, ou si tout a été réécrit.
log-room = Place sur cet appareil
log-room-used = Le navigateur utilise { $used } sur { $allowed } pour cette page.
log-room-unknown = Le navigateur ne dit pas combien de place il y a.
log-room-kept = Le navigateur le conserve jusqu’à ce que vous l’effaciez.
log-room-loose = Le navigateur peut l’effacer quand l’appareil se remplit.
log-room-refused = Le navigateur n’a pas accepté. Il peut encore effacer le journal quand l’appareil se remplit : faites donc des sauvegardes.
log-persist = Demander au navigateur de le garder
log-records = { $n ->
    [one] { $n } enregistrement.
   *[other] { $n } enregistrements.
 }
log-erasing = Effacer des initiales
log-erasing-hint = Quelqu’un peut demander que ses initiales soient effacées. Les remplissages restent, et la chaîne reste entière.
log-erase = Initiales à effacer
log-erase-look = Voir combien il y en a
log-erase-looking = Recherche.
log-erase-none = Aucun enregistrement ne nomme { $who }.
log-erase-found = { $n ->
    [one] { $n } enregistrement nomme { $who }.
   *[other] { $n } enregistrements nomment { $who }.
 }
log-erase-class = { $n ->
    [one] { $n } résultat du groupe sur cet appareil porte ces initiales et part aussi.
   *[other] { $n } résultats du groupe sur cet appareil portent ces initiales et partent aussi.
 }
log-erase-class-done = Les résultats du groupe ne sont plus sur cet appareil.
log-erase-warning = On ne peut pas annuler un effacement. Il n’atteint pas les sauvegardes faites avant, ni d’autres appareils tant qu’ils n’ouvrent pas une nouvelle sauvegarde. Les notes d’autres personnes peuvent aussi nommer quelqu’un : dépliez un tel remplissage dans la liste, et effacez là ses textes.
log-erase-do = Les effacer pour de bon
log-erase-leave = Les garder
log-erase-doing = { $n ->
    [one] Effacement dans { $n } enregistrement.
   *[other] Effacement dans { $n } enregistrements.
 }
log-erase-done = { $n ->
    [one] Effacées de { $n } enregistrement.
   *[other] Effacées de { $n } enregistrements.
 }
log-honest = Le journal trouve les erreurs et les retouches. Il n’arrête pas quelqu’un qui peut vider ce navigateur, ou qui écrit un journal tout nouveau ; les bouts des chaînes, gardés ailleurs, montrent aussi cela.
log-long-line = L’enregistrement fait { $text } octets, trop long pour une ligne. Raccourcissez les notes.
log-cut-off = Le fichier finit avant cet enregistrement.
log-device = « { $text } » n’est pas l’identifiant d’un appareil.
log-number = { $text } n’est pas le numéro d’un enregistrement.
log-when = « { $text } » n’est pas une heure avec son décalage.
log-hash = « { $text } » n’est pas une empreinte (hash).
log-kind = L’enregistrement ne dit pas ce qu’il est.
log-stray = « { $text } » n’a pas de place dans un enregistrement de ce type.
log-lesson = « { $text } » de la séance d’exercices ne peut pas être ainsi.
log-nobody = Une séance d’exercices sans participant.
log-of = « { $text } » ne nomme aucun enregistrement.
log-unknown = Il n’y a pas d’enregistrement { $text }.
log-not-a-fill = L’enregistrement { $text } n’est pas un remplissage ; seuls les remplissages se corrigent.
log-nothing-changed = La correction ne change rien.
log-nothing-to-erase = L’enregistrement { $text } n’a rien à effacer.
log-print-hint = Choisissez un mois pour imprimer son journal.
log-paper = Le journal de ce mois sur papier
log-print = Imprimer ce journal
log-paper-title = Journal : { $month }
log-paper-part = Une partie du journal seulement :
log-paper-table = Remplissages du mois
log-paper-corrected = Corrigé le { $when } par { $who } : { $why }
log-paper-struck = Barré le { $when } par { $who } : { $why }
log-paper-unstruck = Compté de nouveau le { $when } par { $who } : { $why }
log-paper-nobody = personne de nommé
log-paper-no-why = aucune raison donnée
log-paper-totals = Totaux par produit
log-assumed-in = { $n ->
    [one] { $n } remplissage des totaux n’a pas été mesuré et compte comme prévu.
   *[other] { $n } remplissages des totaux n’ont pas été mesurés et comptent comme prévu.
 }
