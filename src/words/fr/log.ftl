# French, in Fluent syntax: what Log says, and the record below Fill’s answer. Terms as in fill.ftl.
# No native reader has checked this file yet.

log-recording = L’enregistrement
record-fill = Enregistrer ce remplissage
record-fill-rests = Déjà enregistré
record-fill-waits = Pas encore conservé
log-recorded = Enregistré { $time }, numéro { $number }.
log-recorded-other = { $machine }, { $day } : enregistré { $time }, numéro { $number }.
log-not-recorded = Pas enregistré : { $why }
log-correct-it = Le corriger
log-stopped = Vous ne pouvez pas enregistrer ce plan : un avertissement s’y oppose.
log-stopped-way = Notez ce que vous avez vraiment fait
log-details = Ajoutez à l’enregistrement avant de toucher le bouton
log-details-next = Ce remplissage est enregistré. Ce que vous tapez maintenant va avec le suivant : { $product } dans { $machine }. Pour compléter celui qui est enregistré, touchez « Le corriger ».
log-details-for = Cela va avec le prochain enregistrement : { $product } dans { $machine }.
log-details-hint = Tout cela peut rester vide. C’est effacé une fois enregistré, et quand vous passez ensuite à une autre machine, un autre produit ou un autre sol ; vos initiales restent sur cet appareil.
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
log-scale-ratio = Force de la solution
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
log-other-rest = Le remplissage n’est pas compté pour { $product }. Le réservoir contient peut-être un reste d’un autre produit : ce qui est dedans et ce que vous versez ne vont peut-être pas ensemble.
log-other-way = Voyez Précautions avant de remplir
log-reason = Pourquoi autrement
log-notes = Notes
log-left-undone = Pas fait le { $day }, { $machine } : { $tasks }. Faites-le avant de remplir.
log-left-undone-unticked = Pas fait le { $day }, { $machine } : personne ne l’a coché après le dernier remplissage. Regardez la machine avant de remplir.
log-left-way = Cochez-le sous « Fin de poste »
remark-log-more = Vous avez mesuré { $measured }, plus que les { $planned } prévus. Enregistrez-le si c’est ce qui a été mis.
remark-log-more-title = Plus que prévu
remark-log-less = Vous avez mesuré { $measured }, moins que les { $planned } prévus. Enregistrez-le si c’est ce qui a été mis.
remark-log-less-title = Moins que prévu
remark-log-over-label = Vous avez mesuré { $measured }. L’étiquette décide pour ce remplissage : pas plus de { $most }. Enregistrez ce qui a été mis, et corrigez le réservoir avant de laver avec.
remark-log-over-label-title = Trop : hors de l’étiquette
remark-log-under-label = Vous avez mesuré { $measured }. L’étiquette décide pour ce remplissage : pas moins de { $least }. Enregistrez ce qui a été mis, et corrigez le réservoir avant de laver avec.
remark-log-under-label-title = Trop peu : hors de l’étiquette
remark-log-under-minimum = Vous avez mesuré { $measured }. Le minimum légal décide pour ce remplissage : pas moins de { $least }. Enregistrez ce qui a été mis, et corrigez le réservoir avant de laver avec.
remark-log-under-minimum-title = Trop peu : sous le minimum
remark-log-over-standard = Vous avez mesuré { $measured }. Votre consigne décide pour ce remplissage : pas plus de { $most }. Enregistrez ce qui a été mis, et corrigez le réservoir avant de laver avec.
remark-log-over-standard-title = Trop : hors de votre consigne
remark-log-under-standard = Vous avez mesuré { $measured }. Votre consigne décide pour ce remplissage : pas moins de { $least }. Enregistrez ce qui a été mis, et corrigez le réservoir avant de laver avec.
remark-log-under-standard-title = Trop peu : hors de votre consigne
remark-log-over-machine = Vous avez mesuré { $measured }. La limite de la machine décide pour ce remplissage : pas plus de { $most }. Enregistrez ce qui a été mis, et corrigez le réservoir avant de laver avec.
remark-log-over-machine-title = Trop : hors de la limite de la machine
remark-log-under-machine = Vous avez mesuré { $measured }. La limite de la machine décide pour ce remplissage : pas moins de { $least }. Enregistrez ce qui a été mis, et corrigez le réservoir avant de laver avec.
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
log-waiting-save = Enregistrer dans un fichier
log-denied = Le navigateur ne conserve rien pour cette page. Une fenêtre privée fait cela, un stockage bloqué aussi. Enregistrez-le dans un fichier, ou ouvrez la page dans une fenêtre ordinaire.
log-full = L’appareil n’a plus de place pour cela. Enregistrez-le dans un fichier, faites de la place sur l’appareil, puis réessayez.
log-newer = Une version plus récente de la page conserve le journal sur cet appareil. Rechargez la page.
log-blocked = Un autre onglet, avec une version plus ancienne de la page, tient le journal. Fermez cet onglet, puis réessayez.
log-unreadable = Le navigateur ne peut pas lire le journal qu’il conserve. Enregistrez dans un fichier ce qui est montré ici, et ouvrez votre dernière sauvegarde.
log-no-random = Le navigateur ne donne pas de nombres aléatoires, l’enregistrement ne peut donc pas être scellé. Enregistrez-le dans un fichier, ou prenez un autre navigateur.
log-failed = Le navigateur ne l’a pas conservé : { $text }. Réessayez, ou enregistrez-le dans un fichier.
log-heading = Qu’a-t-on rempli ?
log-parts = Parties du journal
log-fills = Remplissages
log-shift = Fin de poste
log-questions = Questions
log-keep = Sauvegarde et soin
log-opening = Le journal s’ouvre.
log-opening-of = Le journal s’ouvre : { $done } remplissages sur { $of }.
log-shut = Le journal ne peut pas être ouvert
log-shut-do = Vous pouvez quand même enregistrer un remplissage : il reste à l’écran jusqu’à ce qu’il soit conservé ou enregistré dans un fichier.
log-count = { $n ->
    [one] { $n } remplissage dans le journal. Cet appareil écrit sous le nom { $device }.
   *[other] { $n } remplissages dans le journal. Cet appareil écrit sous le nom { $device }.
 }
log-count-struck = { $n ->
    [one] { $n } d’entre eux a été noté par erreur et ne compte nulle part.
   *[other] { $n } d’entre eux ont été notés par erreur et ne comptent nulle part.
 }
log-backup-last = { $n ->
    [one] Dernière sauvegarde : { $when } ; { $n } enregistrement est venu depuis.
   *[other] Dernière sauvegarde : { $when } ; { $n } enregistrements sont venus depuis.
 }
remark-log-backup-none = { $n ->
    [one] Il n’y a pas de sauvegarde. Si cet appareil est perdu, { $n } enregistrement est perdu avec lui.
   *[other] Il n’y a pas de sauvegarde. Si cet appareil est perdu, { $n } enregistrements sont perdus avec lui.
 }
remark-log-backup-none-title = Faites une sauvegarde
remark-log-backup-old = { $n ->
    [one] La dernière sauvegarde a { $days } jours. Si cet appareil est perdu, { $n } enregistrement est perdu avec lui.
   *[other] La dernière sauvegarde a { $days } jours. Si cet appareil est perdu, { $n } enregistrements sont perdus avec lui.
 }
remark-log-backup-old-title = Faites une sauvegarde
log-save-now = Faire une sauvegarde maintenant
log-lost = Des enregistrements manquent
log-lost-line = { $device } : numéros { $from } à { $to }
log-lost-do = Ils étaient ici un jour. Le navigateur les a perdus. Ouvrez votre dernière sauvegarde : ce qu’elle contient revient.
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
seek-any = Tous
seek-all = Montrer tous les remplissages
log-shown = { $shown } remplissages sur { $n }
log-table = Remplissages, les derniers d’abord
log-caption = { $n ->
    [one] { $n } remplissage, les derniers d’abord
   *[other] { $n } remplissages, les derniers d’abord
 }
log-keys = Avec les flèches et les touches Page préc., Page suiv., Début et Fin, allez d’un remplissage à l’autre. Appuyez sur Entrée pour en déplier un.
log-empty = Aucun remplissage n’est encore enregistré. Dosage a un bouton pour cela sous la quantité.
log-none-found = Aucun remplissage n’est ainsi. Choisissez moins de filtres, ou montrez tous les remplissages.
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
log-at = Fait à
log-day = Jour du remplissage
log-time = Heure du remplissage
log-station = Comment vous appelez cet appareil
log-station-hint = Les enregistrements que vous écrivez ici le disent, par exemple « Point de remplissage, bibliothèque ».
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
