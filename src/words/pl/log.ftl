# Polish, in Fluent syntax: the log. See fill.ftl for the kind of Polish. A hash is called hash, as the trade says it.
# No native reader has checked this file yet.

log-recording = Zapis
record-fill = Zapisz to napełnienie
record-fill-rests = Już zapisano
record-fill-waits = Jeszcze nie zachowano
log-recorded = Zapisano { $time }, numer { $number }.
log-recorded-other = { $machine }, { $day }: zapisano { $time }, numer { $number }.
log-not-recorded = Nie zapisano: { $why }
log-correct-it = Popraw to
log-stopped = Tego planu nie można zapisać: nie pozwala na to ostrzeżenie.
log-stopped-way = Zapisz to, co naprawdę zrobiono
log-details = Dopisz, zanim zapiszesz
log-details-next = Tamto napełnienie jest zapisane. To, co teraz wpiszesz, idzie z następnym: { $product }, { $machine }. Aby dopisać coś do zapisanego, naciśnij „Popraw to”.
log-details-for = Idzie z następnym zapisem: { $product }, { $machine }.
log-details-hint = Wszystko może zostać puste. Czyści się po zapisaniu oraz wtedy, gdy potem przechodzisz do innej maszyny, produktu lub podłogi; twoje inicjały zostają na tym urządzeniu.
log-who = Twoje inicjały
log-who-hint = Dwie lub trzy litery. Można je później wymazać z dziennika.
log-areas = Obszary, na które jest to napełnienie
log-area = Dodaj obszar
log-area-more = Wybierz obszar
log-measured = Odmierzony koncentrat
log-measured-hint = Zostaw puste, jeśli wlano tyle, ile mówi strona, bez mierzenia.
log-no-volume = Ta dawka nie jest objętością. To, co zważono lub policzono, wpisz w uwagach.
log-scale = Co mówi odczyt
log-scale-none = Nic nie odczytano
log-scale-active = Substancja czynna
log-scale-ratio = Stężenie roztworu
log-reading = Odczyt
log-reading-take = Przyjmij odczyt { $reading }
log-deviation = Czy zrobiono to inaczej?
log-deviation-none = Nie, tak jak mówi strona
log-deviation-more = Więcej koncentratu
log-deviation-less = Mniej koncentratu
log-deviation-other-product = Inny produkt
log-deviation-other = Coś innego
log-other-product = Który produkt wlano?
log-other-unlisted = Żaden z tych: podam go niżej
log-planned-other = w planie: { $product }, { $dose }
log-other-rest = To napełnienie nie liczy się dla produktu { $product }. W zbiorniku może być reszta innego produktu: tego, co w nim jest, być może nie wolno łączyć z tym, co wlewasz.
log-other-way = Zobacz Ostrzeżenia, zanim napełnisz
log-reason = Dlaczego inaczej
log-notes = Uwagi
log-left-undone = Niezrobione, { $day }, { $machine }: { $tasks }. Zrób to, zanim napełnisz.
log-left-undone-unticked = Niezrobione, { $day }, { $machine }: nikt tego nie odhaczył po ostatnim napełnieniu. Obejrzyj maszynę, zanim napełnisz.
log-left-way = Odhacz to w „Koniec zmiany”
remark-log-more = Odmierzono { $measured }, więcej niż { $planned } w planie. Zapisz to, jeśli tyle wlano.
remark-log-more-title = Więcej niż w planie
remark-log-less = Odmierzono { $measured }, mniej niż { $planned } w planie. Zapisz to, jeśli tyle wlano.
remark-log-less-title = Mniej niż w planie
remark-log-over-label = Odmierzono { $measured }. Przy tym napełnieniu decyduje etykieta: nie więcej niż { $most }. Zapisz, ile wlano, i popraw roztwór w zbiorniku, zanim zaczniesz czyścić.
remark-log-over-label-title = Za dużo: poza etykietą
remark-log-under-label = Odmierzono { $measured }. Przy tym napełnieniu decyduje etykieta: nie mniej niż { $least }. Zapisz, ile wlano, i popraw roztwór w zbiorniku, zanim zaczniesz czyścić.
remark-log-under-label-title = Za mało: poza etykietą
remark-log-under-minimum = Odmierzono { $measured }. Przy tym napełnieniu decyduje minimum prawne: nie mniej niż { $least }. Zapisz, ile wlano, i popraw roztwór w zbiorniku, zanim zaczniesz czyścić.
remark-log-under-minimum-title = Za mało: poniżej minimum
remark-log-over-standard = Odmierzono { $measured }. Przy tym napełnieniu decyduje wasz standard: nie więcej niż { $most }. Zapisz, ile wlano, i popraw roztwór w zbiorniku, zanim zaczniesz czyścić.
remark-log-over-standard-title = Za dużo: poza waszym standardem
remark-log-under-standard = Odmierzono { $measured }. Przy tym napełnieniu decyduje wasz standard: nie mniej niż { $least }. Zapisz, ile wlano, i popraw roztwór w zbiorniku, zanim zaczniesz czyścić.
remark-log-under-standard-title = Za mało: poza waszym standardem
remark-log-over-machine = Odmierzono { $measured }. Przy tym napełnieniu decyduje limit maszyny: nie więcej niż { $most }. Zapisz, ile wlano, i popraw roztwór w zbiorniku, zanim zaczniesz czyścić.
remark-log-over-machine-title = Za dużo: poza limitem maszyny
remark-log-under-machine = Odmierzono { $measured }. Przy tym napełnieniu decyduje limit maszyny: nie mniej niż { $least }. Zapisz, ile wlano, i popraw roztwór w zbiorniku, zanim zaczniesz czyścić.
remark-log-under-machine-title = Za mało: poza limitem maszyny
remark-log-over-tank = Zapisujesz { $level }. Zbiornik tej maszyny mieści { $tank }.
remark-log-over-tank-title = Więcej, niż mieści zbiornik
log-lack-reason = Napisz, dlaczego zrobiono to inaczej.
log-lack-why = Napisz, dlaczego to poprawiasz.
log-lack-product = Wybierz produkt.
log-lack-scale = Wybierz, co mówi odczyt.
log-lack-nothing = Wpisz choć jedną ilość albo uwagę.
log-lack-day = To nie jest dzień.
log-lack-time = Podaj, o której to było, na przykład 06:30.
log-lack-later = Ta chwila jeszcze nie nadeszła.
log-not-kept = { $n ->
    [one] { $n } zapis nie jest jeszcze zachowany
    [few] { $n } zapisy nie są jeszcze zachowane
    [many] { $n } zapisów nie jest jeszcze zachowanych
   *[other] { $n } zapisu nie jest jeszcze zachowane
}
log-again = Spróbuj ponownie
log-let-go = Porzuć to
log-waiting-save = Zapisz jako plik
log-denied = Przeglądarka nie zachowuje nic dla tej strony. Tak działa okno prywatne i tak działa zablokowana pamięć. Zapisz to jako plik albo otwórz stronę w zwykłym oknie.
log-full = Na urządzeniu nie ma już na to miejsca. Zapisz to jako plik, zrób miejsce na urządzeniu, potem spróbuj ponownie.
log-newer = Dziennik na tym urządzeniu prowadzi nowsza wersja strony. Wczytaj stronę od nowa.
log-blocked = Inna karta ze starszą wersją strony trzyma dziennik. Zamknij tę kartę, potem spróbuj ponownie.
log-unreadable = Przeglądarka nie umie odczytać dziennika, który zachowała. Zapisz jako plik to, co tu widać, i otwórz swoją ostatnią kopię zapasową.
log-no-random = Przeglądarka nie daje liczb losowych, więc zapisu nie można zapieczętować. Zapisz go jako plik albo użyj innej przeglądarki.
log-failed = Przeglądarka tego nie zachowała: { $text }. Spróbuj ponownie albo zapisz to jako plik.

log-heading = Co napełniono?
log-parts = Części dziennika
log-fills = Napełnienia
log-shift = Koniec zmiany
log-questions = Pytania
log-keep = Kopia i porządek
log-opening = Dziennik się otwiera.
log-opening-of = Dziennik się otwiera: { $done } z { $of } napełnień.
log-shut = Nie można otworzyć dziennika
log-shut-do = Napełnienie nadal można zapisać: zostaje na ekranie, dopóki nie zostanie zachowane lub zapisane jako plik.
log-count = { $n ->
    [one] { $n } napełnienie w dzienniku. To urządzenie pisze jako { $device }.
    [few] { $n } napełnienia w dzienniku. To urządzenie pisze jako { $device }.
    [many] { $n } napełnień w dzienniku. To urządzenie pisze jako { $device }.
   *[other] { $n } napełnienia w dzienniku. To urządzenie pisze jako { $device }.
}
log-count-struck = { $n ->
    [one] { $n } z nich zapisano przez pomyłkę; nigdzie się nie liczy.
    [few] { $n } z nich zapisano przez pomyłkę; nigdzie się nie liczą.
    [many] { $n } z nich zapisano przez pomyłkę; nigdzie się nie liczą.
   *[other] { $n } z nich zapisano przez pomyłkę; nigdzie się nie liczą.
}
log-backup-last = { $n ->
    [one] Ostatnia kopia zapasowa { $when }; od tego czasu doszedł { $n } zapis.
    [few] Ostatnia kopia zapasowa { $when }; od tego czasu doszły { $n } zapisy.
    [many] Ostatnia kopia zapasowa { $when }; od tego czasu doszło { $n } zapisów.
   *[other] Ostatnia kopia zapasowa { $when }; od tego czasu doszło { $n } zapisu.
}
remark-log-backup-none = { $n ->
    [one] Nie ma kopii zapasowej. Jeśli to urządzenie przepadnie, przepadnie z nim { $n } zapis.
    [few] Nie ma kopii zapasowej. Jeśli to urządzenie przepadnie, przepadną z nim { $n } zapisy.
    [many] Nie ma kopii zapasowej. Jeśli to urządzenie przepadnie, przepadnie z nim { $n } zapisów.
   *[other] Nie ma kopii zapasowej. Jeśli to urządzenie przepadnie, przepadnie z nim { $n } zapisu.
}
remark-log-backup-none-title = Zapisz kopię zapasową
remark-log-backup-old = { $n ->
    [one] Ostatnia kopia zapasowa ma { $days } dni. Jeśli to urządzenie przepadnie, przepadnie z nim { $n } zapis.
    [few] Ostatnia kopia zapasowa ma { $days } dni. Jeśli to urządzenie przepadnie, przepadną z nim { $n } zapisy.
    [many] Ostatnia kopia zapasowa ma { $days } dni. Jeśli to urządzenie przepadnie, przepadnie z nim { $n } zapisów.
   *[other] Ostatnia kopia zapasowa ma { $days } dni. Jeśli to urządzenie przepadnie, przepadnie z nim { $n } zapisu.
}
remark-log-backup-old-title = Zapisz kopię zapasową
log-save-now = Zapisz teraz kopię
log-lost = Brakuje zapisów
log-lost-line = { $device }: numery { $from } do { $to }
log-lost-do = Kiedyś tu były. Przeglądarka je zgubiła. Otwórz swoją ostatnią kopię zapasową: to, co w niej jest, wróci.
log-clock-back = { $n ->
    [one] Zegar tego urządzenia cofnął się przed { $n } zapisem. Jego czas może być zły; nic nie przepadło.
    [few] Zegar tego urządzenia cofnął się przed { $n } zapisami. Ich czas może być zły; nic nie przepadło.
    [many] Zegar tego urządzenia cofnął się przed { $n } zapisami. Ich czas może być zły; nic nie przepadło.
   *[other] Zegar tego urządzenia cofnął się przed { $n } zapisu. Ich czas może być zły; nic nie przepadło.
}
log-astray = { $n ->
    [one] { $n } poprawka wskazuje napełnienie, którego nie ma w tym dzienniku. Otwórz kopię zapasową, w której ono jest.
    [few] { $n } poprawki wskazują napełnienia, których nie ma w tym dzienniku. Otwórz kopię zapasową, w której one są.
    [many] { $n } poprawek wskazuje napełnienia, których nie ma w tym dzienniku. Otwórz kopię zapasową, w której one są.
   *[other] { $n } poprawki wskazuje napełnienia, których nie ma w tym dzienniku. Otwórz kopię zapasową, w której one są.
}
log-seek = Które napełnienia
seek-month = Miesiąc
seek-product = Produkt
seek-machine = Maszyna
seek-area = Obszar
seek-standard = Standard
seek-who = Kto
seek-any = Wszystkie
seek-all = Pokaż wszystkie napełnienia
log-shown = { $shown } z { $n } napełnień
log-table = Napełnienia, najnowsze na początku
log-caption = { $n ->
    [one] { $n } napełnienie, najnowsze na początku
    [few] { $n } napełnienia, najnowsze na początku
    [many] { $n } napełnień, najnowsze na początku
   *[other] { $n } napełnienia, najnowsze na początku
}
log-keys = Od napełnienia do napełnienia przechodzisz strzałkami oraz klawiszami Page up, Page down, Home i End. Enter rozwija jedno z nich.
log-empty = Nie zapisano jeszcze żadnego napełnienia. W Dozowaniu pod ilością jest do tego przycisk.
log-none-found = Nie ma takiego napełnienia. Wybierz mniej warunków albo pokaż wszystkie.
log-column-when = Kiedy
log-column-product = Produkt
log-column-planned = W planie
log-column-measured = Odmierzono
log-column-machine = Maszyna
log-column-who = Kto
log-struck = pomyłka
log-contested = dwa o tym numerze
log-corrected = poprawiono
log-title = Numer { $number }, { $when }: { $product }, { $machine }
log-history = Co zapisano, po kolei
log-past = { $kind }, { $number }, { $when }.
log-written-by = Autor zapisu: { $who }.
log-kind-fill = Napełnienie
log-kind-correction = Poprawka
log-kind-erasure = Wymazanie
log-kind-lesson = Ćwiczenia
log-kind-unsaid = Zapis
log-part-by = Kto to zapisał
log-part-who = Kto to zrobił
log-part-reason = Dlaczego inaczej
log-part-notes = Uwagi
log-part-why = Dlaczego poprawiono
log-erased-parts = Wymazano
log-blanked = Wymazano na prośbę
log-altered-text = Nie to, co zapisano
log-nothing = Nic
log-struck-field = Liczy się
log-is-struck = Nie: zapisano przez pomyłkę
log-not-struck = Tak
log-standard = Standard
log-standard-of = { $name }, wersja { $version }
log-product = Produkt
log-machine = Maszyna
log-floor = Podłoga
log-at = Zrobiono
log-day = Dzień napełnienia
log-time = Godzina napełnienia
log-station = Jak nazywasz to urządzenie
log-station-hint = Zapisy, które tu robisz, podają tę nazwę, na przykład „Miejsce napełniania, biblioteka”.
log-this-device = To urządzenie
log-done-by = Kto to zrobił
log-done-by-hint = Inicjały
log-concentrate = Koncentrat w planie
log-water = Woda w planie
log-level = Napełniono do
log-end-of-shift = Koniec zmiany
log-unknown-record = Nie wiadomo
log-choose-product = Wybierz produkt
log-as = Zapis podaje, kto to zrobił: { $who }.
log-new-day = Jest nowy dzień. Kim jesteś?
log-still = To nadal ja, { $who }
log-other-person = Ktoś inny
log-correct = Popraw ten zapis
log-by-hand = Zapisz napełnienie ręcznie
log-hand-heading = Napełnienie zapisane ręcznie
log-hand-hint = Zapisz, co naprawdę zrobiono. Zostaw dzień i godzinę puste, jeśli to było przed chwilą.
log-hand-record = Zapisz to
log-leave-form = Zamknij bez zapisywania
log-correct-heading = Popraw zapis
log-correct-hint = Pierwszy zapis zostaje taki, jaki był. To, co tu zmienisz, zapisuje się pod nim, z twoimi inicjałami i powodem. Opróżniony tekst zostaje taki, jaki był; tylko wymazanie go usuwa.
log-why = Dlaczego to poprawiasz
log-nothing-new = Nic jeszcze nie zmieniono.
log-correct-save = Zapisz poprawkę
log-strike = Zapisano przez pomyłkę
log-unstrike = Jednak się liczy
log-strike-hint = Napełnienie zapisane przez pomyłkę zostaje w dzienniku i nigdzie się nie liczy.
log-left = Niezrobione lub nieodhaczone
log-left-line = { $machine }, { $day }: { $tasks }
log-left-line-unticked = { $machine }, { $day }: nikt tego nie odhaczył po ostatnim napełnieniu
log-shift-today = Napełniane w ostatnich 24 godzinach
log-shift-hint = Odhacz każdą maszynę w tej kolejności. Zapisuje się to od razu, przy ostatnim napełnieniu maszyny.
log-shift-none = W ostatnich 24 godzinach nie napełniono żadnej maszyny.
log-shift-late = Wcześniejsze, nieodhaczone
log-shift-late-hint = Te maszyny napełniano w ostatnich 7 dniach i coś zostało. Odhacz to, co już zrobiono.
log-shift-machine = { $n ->
    [one] { $machine }: { $n } napełnienie, { $time }
    [few] { $machine }: { $n } napełnienia, ostatnie { $time }
    [many] { $machine }: { $n } napełnień, ostatnie { $time }
   *[other] { $machine }: { $n } napełnienia, ostatnie { $time }
}
log-task-drain = Opróżnienie zbiorników
log-task-rinse = Wypłukanie zbiorników
log-task-filters = Czyszczenie filtrów
log-task-brush = Czyszczenie worka na śmieci lub szczotki
log-task-squeegee = Wytarcie ssawy
log-state-done = Zrobione
log-state-not-done = Niezrobione
log-state-not-asked = Nieodhaczone

log-by = Licz według
log-by-product = Produkt
log-by-machine = Maszyna
log-by-area = Obszar
log-by-month = Miesiąc
log-by-who = Osoba
log-by-standard = Standard
log-unnamed = Nie podano
log-uncounted = Nie dało się tu policzyć { $n } z { $of } napełnień.
log-column-what = Czego
log-column-fills = Napełnienia
log-column-used = Zużyto
log-column-off = Za dużo lub za mało
log-column-share = W procentach
log-column-otherwise = Inaczej, niezrobione, uwagi
log-column-compared-planned = Plan, ze zmierzonych
log-column-compared = Odmierzono
log-column-uncounted = Nieliczone
log-column-number = Numer
log-column-ratio = Odmierzone do planu
log-column-range = Od poprzedniego
log-column-stands-out = Odstaje
log-column-price = Cena
log-column-cost = Koszt
log-column-left = Zostało
log-column-daily = Na dzień
log-column-lasts = Starcza na
log-column-recipe = Receptura
log-column-readings = Odczyty
log-column-mean = Średnia
log-column-week = Zmiana na tydzień
log-column-doubt = Niepewność
log-column-says = Co to mówi
log-column-task = Zadanie
log-column-left-undone = Niezrobione
log-column-water = Woda
ask-use = Ile zużyto?
ask-use-picture = Zużyty koncentrat.
ask-use-legend = Słupek to zużycie; kreska to plan.
ask-use-table = Zużycie wobec planu
remark-log-use-none = Żadne napełnienie nie ma ilości, którą dałoby się dodać.
remark-log-use-planned = { $fills ->
    [one] Według planu { $used }, { $fills } napełnienie. Nikt nie mierzył, więc to ilość z planu, nie ilość wlana.
    [few] Według planu { $used }, { $fills } napełnienia. Nikt nie mierzył, więc to ilość z planu, nie ilość wlana.
    [many] Według planu { $used }, { $fills } napełnień. Nikt nie mierzył, więc to ilość z planu, nie ilość wlana.
   *[other] Według planu { $used }, { $fills } napełnienia. Nikt nie mierzył, więc to ilość z planu, nie ilość wlana.
}
remark-log-use-even = Zużyto { $used }, napełnienia: { $fills }. Zmierzone ({ $measured }) wzięły tyle, ile było w planie.
remark-log-use-over = Zużyto { $used }, napełnienia: { $fills }. Zmierzone ({ $measured }) wzięły o { $off } więcej niż w planie: o { $share } za dużo.
remark-log-use-under = Zużyto { $used }, napełnienia: { $fills }. Zmierzone ({ $measured }) wzięły o { $off } mniej niż w planie: o { $share } za mało.
remark-log-assumed = { $n ->
    [one] { $n } napełnienia nie zmierzono i liczy się je jak w planie.
    [few] { $n } napełnień nie zmierzono i liczy się je jak w planie.
    [many] { $n } napełnień nie zmierzono i liczy się je jak w planie.
   *[other] { $n } napełnienia nie zmierzono i liczy się je jak w planie.
}
remark-log-shared = { $n ->
    [one] { $n } raz napełnienie było na kilka obszarów. Każdemu z nich liczy się całość, więc zużycie według obszarów to najwięcej, ile może być.
    [few] { $n } razy napełnienie było na kilka obszarów. Każdemu z nich liczy się całość, więc zużycie według obszarów to najwięcej, ile może być.
    [many] { $n } razy napełnienie było na kilka obszarów. Każdemu z nich liczy się całość, więc zużycie według obszarów to najwięcej, ile może być.
   *[other] { $n } raza napełnienie było na kilka obszarów. Każdemu z nich liczy się całość, więc zużycie według obszarów to najwięcej, ile może być.
}
ask-doses = Czy dawki były jak w planie?
ask-doses-picture = Odmierzone do planu, napełnienie po napełnieniu, z granicami.
ask-doses-values = Odmierzone do planu
ask-doses-ranges = Odstęp od poprzedniego napełnienia
ask-doses-legend = Cienka kreska: średnia. Kreski przerywane: granice. Kółko z numerem odstaje; tabela mówi, dlaczego.
ask-doses-table = Napełnienia na wykresie
ask-constant = { $symbol } = { $value }
remark-log-doses-high = Średnio wlewano { $mean } planu: za dużo, napełnienie po napełnieniu. Równy rozrzut nie znaczy, że jest dobrze.
remark-log-doses-low = Średnio wlewano { $mean } planu: za mało, napełnienie po napełnieniu. Równy rozrzut nie znaczy, że jest dobrze.
remark-log-doses-none = Żadne napełnienie nie ma ilości i w planie, i odmierzonej.
remark-log-doses = Zmierzone napełnienia: { $known }. W granicach jednej dziesiątej od planu: { $within }, powyżej: { $over }, poniżej: { $under }.
remark-log-chart-few = Na wykres trzeba tylu zmierzonych napełnień: { $fewest }; jest ich { $n }.
remark-log-chart-steady = Z ostatnich { $n } żadne nie odstaje: rozrzut jest zwykły.
remark-log-chart-out = Z ostatnich { $n } napełnień od zwykłego rozrzutu odstaje { $out }. Zapytaj, co było inaczej. Odstaje też { $run } z rzędu po jednej stronie średniej.
remark-log-chart-pulled = Napełnienia poza granicami ciągną średnią do siebie. Najpierw obejrzyj te: popraw to, co zapisano źle.
remark-log-chart-estimate = Te granice to szacunek: pochodzą tylko z tylu wartości: { $n }.
control-beyond = Poza granicami
control-jump = Skok od poprzedniego napełnienia
control-run = Osiem lub więcej po jednej stronie średniej
ask-cost = Ile to kosztowało?
ask-cost-picture = Koszt według produktu.
ask-cost-table = Koszt według produktu
remark-log-cost-none = Żadne napełnienie nie ma i ilości, i ceny. Ceny są przy produktach w Obiekcie.
remark-log-cost = { $fills ->
    [one] Koszt { $fills } napełnienia, po cenach z dzisiaj. Jak w planie, niezmierzone: { $assumed }.
    [few] Koszt { $fills } napełnień, po cenach z dzisiaj. Jak w planie, niezmierzone: { $assumed }.
    [many] Koszt { $fills } napełnień, po cenach z dzisiaj. Jak w planie, niezmierzone: { $assumed }.
   *[other] Koszt { $fills } napełnienia, po cenach z dzisiaj. Jak w planie, niezmierzone: { $assumed }.
}
remark-log-unpriced = Nie ma tego w sumie, bo cena nie jest znana: { $products }.
remark-log-water-free = Cena wody nie jest znana; wody nie ma w sumie.
ask-stock = Na jak długo starczy zapasu?
ask-stock-picture = Dni, zanim półka będzie pusta.
ask-stock-legend = Słupek to czas, na który starcza zapas; kreska to czas dostawy.
ask-stock-table = Zapas według produktu
ask-days = { $n ->
    [one] { $n } dzień
    [few] { $n } dni
    [many] { $n } dni
   *[other] { $n } dnia
}
stock-count = Opakowania na półce: { $product }
stock-day = Dzień liczenia: { $product }
stock-no-day = Wybierz dzień liczenia: dzisiaj lub wcześniej.
stock-no-container = W obiekcie nie podano, ile mieści opakowanie.
stock-not-counted = Jeszcze nie policzono
remark-log-stock-none = Policz, co jest na półce, i wpisz tu liczbę, a zobaczysz, na jak długo starczy.
remark-log-stock = { $days ->
    [one] Najpierw skończy się { $product }, za około { $days } dzień. To szacunek, po { $daily } na dzień: średnia z ostatnich 90 dni albo od pierwszego napełnienia w tym czasie.
    [few] Najpierw skończy się { $product }, za około { $days } dni. To szacunek, po { $daily } na dzień: średnia z ostatnich 90 dni albo od pierwszego napełnienia w tym czasie.
    [many] Najpierw skończy się { $product }, za około { $days } dni. To szacunek, po { $daily } na dzień: średnia z ostatnich 90 dni albo od pierwszego napełnienia w tym czasie.
   *[other] Najpierw skończy się { $product }, za około { $days } dnia. To szacunek, po { $daily } na dzień: średnia z ostatnich 90 dni albo od pierwszego napełnienia w tym czasie.
}
remark-log-stock-late = Produkt { $product } skończy się, zanim przyjdzie dostawa zamówiona dzisiaj. Zamów teraz.
log-no-use = Zużycie nie jest jeszcze znane
log-products = Więcej niż jeden produkt
ask-drift = Czy odczyty się przesuwają?
ask-drift-picture = Odczyty ({ $n }) produktu { $product } z ich prostą i jej niepewnością.
ask-drift-legend = Kreska przerywana: jak zmieniają się odczyty. Pas: jakie może być nachylenie.
ask-drift-table = Odczyty według receptury
ask-drift-few = Za mało: trzeba { $n } z różnych dni lub godzin
ask-drift-no = Bez wyraźnej zmiany
ask-drift-rises = Rośnie
ask-drift-falls = Spada
remark-log-drift-few = Aby zobaczyć zmianę, trzeba tylu odczytów jednej receptury, z różnych dni lub godzin: { $fewest }.
remark-log-drift-steady = { $product }: odczyty w liczbie { $n }, ze średnią { $mean }, nie pokazują wyraźnej zmiany. Tydzień zmienia je o { $week }, plus minus { $doubt }.
remark-log-drift-rises = { $product }: odczyty w liczbie { $n }, ze średnią { $mean }, rosną o { $week } na tydzień, plus minus { $doubt }.
remark-log-drift-falls = { $product }: odczyty w liczbie { $n }, ze średnią { $mean }, spadają o { $week } na tydzień, plus minus { $doubt }.
log-too-few-readings = Za mało odczytów
log-mixed-readings = Odczyty więcej niż jednej receptury
ask-undone = Czego nie zrobiono?
ask-undone-picture = Ile razy nie zrobiono każdego zadania.
ask-undone-times = { $n ->
    [one] { $n } raz
    [few] { $n } razy
    [many] { $n } razy
   *[other] { $n } raza
}
ask-undone-table = Zadania na koniec zmiany
ask-undone-shifts = Zmiany z czymś niezrobionym, najnowsze na początku
ask-undone-unticked = Zmiany, których nikt nie odhaczył, najnowsze na początku
ask-undone-more = Wcześniejsze, niewymienione tutaj: { $n }.
remark-log-undone-unasked = Nie odhaczono żadnej zmiany. Zmiany, których nikt nie odhaczył: { $unticked }.
remark-log-undone-none = { $n ->
    [one] Na { $n } odhaczonej zmianie zrobiono wszystko. Zmiany, których nikt nie odhaczył: { $unticked }.
    [few] Na { $n } odhaczonych zmianach zrobiono wszystko. Zmiany, których nikt nie odhaczył: { $unticked }.
    [many] Na { $n } odhaczonych zmianach zrobiono wszystko. Zmiany, których nikt nie odhaczył: { $unticked }.
   *[other] Na { $n } odhaczonej zmiany zrobiono wszystko. Zmiany, których nikt nie odhaczył: { $unticked }.
}
remark-log-undone-part = Zmiany odhaczone: { $n }. Odhaczone częściowo: { $missed }. Zmiany, których nikt nie odhaczył: { $unticked }.
remark-log-undone = Zmiany odhaczone: { $n }. Z czymś niezrobionym: { $missed }. Najczęściej niezrobione: { $task }, { $times } z { $n }. Zmiany, których nikt nie odhaczył: { $unticked }.
figure-log-used = Zużyty koncentrat
figure-log-planned = W planie, zmierzone napełnienia
figure-log-measured = Odmierzono, te same napełnienia
figure-log-centre = Średnia
figure-log-lower = Dolna granica
figure-log-upper = Górna granica
figure-log-range = Średni odstęp
figure-log-range-upper = Granica odstępu
figure-log-cost = Koszt
figure-log-cost-concentrate = Koncentrat
figure-log-cost-water = Woda
formula-log-share = Odmierzone do planu, z napełnień, które mają jedno i drugie.
formula-log-cost = Koncentrat i woda po swoich cenach.
formula-log-supply = Zapas podzielony przez średnie dzienne zużycie.
formula-log-drift = Nachylenie prostej przez odczyty, na tydzień.
formula-control-upper = Trzy odchylenia standardowe powyżej średniej, ze średniego odstępu.
formula-control-lower = Trzy poniżej niej, ale nie mniej niż zero.
formula-control-range = Najwięcej, ile zwykle ma odstęp.

log-out = Zapisz dziennik
log-out-hint = Kopia zapasowa ma każdy zapis z jego hashem. Otwiera się na każdym urządzeniu, ile razy chcesz: nic nie przychodzi dwa razy.
log-save = Zapisz kopię
log-csv = Zapisz tabelę
log-csv-hint = Tabela jest do czytania w arkuszu. Nie wraca do dziennika: wraca tylko kopia zapasowa.
log-in = Otwórz kopię
log-open = Otwórz plik
log-open-hint = Najpierw zobaczysz, co by przyniósł. Nic się nie przyjmie, dopóki na to nie pozwolisz.
log-file-too-big = Plik jest większy niż jakikolwiek dziennik. Nie odczytano go.
log-reading-file = Plik się odczytuje.
log-busy-opening = Odczytywanie napełnień: { $done } z { $of }.
log-busy-reading = Odczytywanie pliku: { $done } z { $of }.
log-busy-comparing = Porównywanie: { $done } z { $of }.
log-busy-writing = Zapisywanie: { $done } z { $of }.
log-busy-saving = Tworzenie pliku: { $done } z { $of }.
log-refused = Plik odrzucono. Nic nie przyjęto.
log-compared = Zapisy w pliku: { $records }, w tym nowe: { $added }, znane: { $known }.
log-file-broken = Plik nie jest cały.
log-file-erases = { $n ->
    [one] { $n } twój tekst wymazano tam na prośbę. Gdy przyjmiesz plik, zostanie wymazany także tutaj.
    [few] { $n } twoje teksty wymazano tam na prośbę. Gdy przyjmiesz plik, zostaną wymazane także tutaj.
    [many] { $n } twoich tekstów wymazano tam na prośbę. Gdy przyjmiesz plik, zostaną wymazane także tutaj.
   *[other] { $n } twojego tekstu wymazano tam na prośbę. Gdy przyjmiesz plik, zostanie wymazane także tutaj.
}
log-flaws = { $n ->
    [one] { $n } wiersz nie jest zapisem i zostaje pominięty:
    [few] { $n } wiersze nie są zapisami i zostają pominięte:
    [many] { $n } wierszy nie jest zapisami i zostaje pominiętych:
   *[other] { $n } wiersza nie jest zapisem i zostaje pominięte:
}
log-line = Wiersz { $line }:
log-conflicts = { $n ->
    [one] { $n } numer ma dwa zapisy, które mówią co innego. Oba są zachowane i pokazane.
    [few] { $n } numery mają dwa zapisy, które mówią co innego. Oba są zachowane i pokazane.
    [many] { $n } numerów ma dwa zapisy, które mówią co innego. Oba są zachowane i pokazane.
   *[other] { $n } numeru ma dwa zapisy, które mówią co innego. Oba są zachowane i pokazane.
}
log-stock-all = Tu liczą się wszystkie napełnienia, bez względu na wybór powyżej: każda maszyna bierze z tej samej półki.
log-erase-texts = Wymaż jego słowa
log-file-altered = Tu albo w pliku zmieniono to po zapisaniu: { $records }. Zostaje to, co jest takie, jak zapisano; zmienionego się nie przyjmuje.
log-measured-told = odmierzono { $text }
log-conflict-table = Dwa zapisy o jednym numerze
log-column-record = Zapis
log-column-one = Jeden mówi
log-column-other = Drugi mówi
log-take = Przyjmij nowe zapisy
log-take-broken = Mimo to przyjmij
log-leave = Zostaw go
log-left-out = Nic nie przyjęto.
log-taken-mended = Nie ma nowych zapisów. To, co się różniło, naprawiono z pliku.
log-taken = { $n ->
    [one] Przyjęto { $n } zapis.
    [few] Przyjęto { $n } zapisy.
    [many] Przyjęto { $n } zapisów.
   *[other] Przyjęto { $n } zapisu.
}
log-locked = Pliki otwiera się i wymazuje tylko na zwolnionym urządzeniu. Najpierw zwolnij to urządzenie w Obiekcie.
log-chain = Czy dziennik jest cały?
log-chain-hint = Każdy zapis zawiera hash poprzedniego. Sprawdzenie znajduje zapis, który zmieniono, pominięto lub przesunięto.
log-check = Sprawdź wszystkie zapisy
log-check-not-yet = Nie sprawdzono od otwarcia strony.
log-check-running = Sprawdzanie: { $done } z { $of }.
log-check-whole = { $n ->
    [one] Cały: { $n } zapis się zgadza.
    [few] Cały: wszystkie zapisy ({ $n }) się zgadzają.
    [many] Cały: wszystkie zapisy ({ $n }) się zgadzają.
   *[other] Cały: zgadza się { $n } zapisu.
}
log-broken = Łańcuch pęka przy zapisie { $id }.
log-broken-file-do = Zapisy po tym miejscu mogą być zmienione lub może ich brakować. Zanim go przyjmiesz, poproś tego, kto go zapisał, o całą kopię.
log-broken-do = Niczego nie wymazuj. Zapisz kopię zapasową w takim stanie, powiedz przełożonemu i otwórz obok wcześniejszą kopię.
log-altered = Zapis nie jest tym, co zapisano.
log-words-altered = Ten tekst nie jest tym, co zapisano: { $part }.
log-words-gone = Tego tekstu nie ma, a nic nie mówi, że go wymazano: { $part }.
log-missing = Zapisu brakuje, a późniejsze są.
log-doubled = Zapis jest tam dwa razy.
log-forked = Inny zapis ma ten sam numer.
log-moved = Zapis stoi w złym miejscu.
log-unlinked = Nie pasuje do zapisu przed nim.
log-replaced = Był kiedyś ostatnim zapisem i był inny.
log-heads = Koniec każdego łańcucha
log-heads-hint = Spisz je lub wydrukuj: pokażą później, czy zniknęły zapisy na końcu albo czy wszystko napisano od nowa.
log-room = Miejsce na tym urządzeniu
log-room-used = Przeglądarka używa na tę stronę { $used } z { $allowed }.
log-room-unknown = Przeglądarka nie mówi, ile jest miejsca.
log-room-kept = Przeglądarka zachowa to, dopóki tego nie usuniesz.
log-room-loose = Przeglądarka może to usunąć, gdy urządzenie się zapełni.
log-room-refused = Przeglądarka się nie zgodziła. Nadal może usunąć dziennik, gdy urządzenie się zapełni, więc zapisuj kopie zapasowe.
log-persist = Poproś przeglądarkę, aby to zachowała
log-records = { $n ->
    [one] { $n } zapis.
    [few] { $n } zapisy.
    [many] { $n } zapisów.
   *[other] { $n } zapisu.
}
log-erasing = Wymaż inicjały
log-erasing-hint = Ktoś może poprosić, aby jego inicjały znikły. Napełnienia zostają, a łańcuch nadal się zgadza.
log-erase = Inicjały do wymazania
log-erase-look = Zobacz, ile ich jest
log-erase-looking = Szukanie.
log-erase-none = Żaden zapis nie ma inicjałów { $who }.
log-erase-found = { $n ->
    [one] { $n } zapis ma inicjały { $who }.
    [few] { $n } zapisy mają inicjały { $who }.
    [many] { $n } zapisów ma inicjały { $who }.
   *[other] { $n } zapisu ma inicjały { $who }.
}
log-erase-class = { $n ->
    [one] { $n } wynik grupy na tym urządzeniu ma te inicjały i też zniknie.
    [few] { $n } wyniki grupy na tym urządzeniu mają te inicjały i też znikną.
    [many] { $n } wyników grupy na tym urządzeniu ma te inicjały i też zniknie.
   *[other] { $n } wyniku grupy na tym urządzeniu ma te inicjały i też zniknie.
}
log-erase-class-done = Wyniki grupy są usunięte z tego urządzenia.
log-erase-warning = Wymazania nie da się cofnąć. Nie sięga ono kopii zapasowych zapisanych wcześniej ani innych urządzeń, dopóki nie otworzą nowej kopii. Uwagi innych też mogą kogoś wymieniać: rozwiń takie napełnienie na liście i wymaż tam jego słowa.
log-erase-do = Wymaż na dobre
log-erase-leave = Zostaw je
log-erase-doing = { $n ->
    [one] Wymazywanie z { $n } zapisu.
    [few] Wymazywanie z { $n } zapisów.
    [many] Wymazywanie z { $n } zapisów.
   *[other] Wymazywanie z { $n } zapisu.
}
log-erase-done = { $n ->
    [one] Wymazano z { $n } zapisu.
    [few] Wymazano z { $n } zapisów.
    [many] Wymazano z { $n } zapisów.
   *[other] Wymazano z { $n } zapisu.
}
log-honest = Dziennik znajduje pomyłki i zmiany. Nie zatrzyma kogoś, kto może wyczyścić tę przeglądarkę albo napisać cały nowy dziennik; końce łańcuchów, przechowane gdzie indziej, pokażą także to.
log-long-line = Zapis ma { $text } bajtów, za dużo na wiersz. Skróć uwagi.
log-cut-off = Plik kończy się, zanim kończy się ten zapis.
log-device = „{ $text }” to nie jest identyfikator urządzenia.
log-number = { $text } to nie jest numer zapisu.
log-when = „{ $text }” to nie jest czas z przesunięciem strefy.
log-hash = „{ $text }” to nie jest hash.
log-kind = Zapis nie mówi, czym jest.
log-stray = „{ $text }” nie ma miejsca w zapisie tego rodzaju.
log-lesson = „{ $text }” z ćwiczeń nie może takie być.
log-nobody = Ćwiczenia, w których nikt nie brał udziału.
log-of = „{ $text }” nie wskazuje żadnego zapisu.
log-unknown = Nie ma zapisu { $text }.
log-not-a-fill = Zapis { $text } to nie napełnienie; poprawia się tylko napełnienia.
log-nothing-changed = Poprawka niczego nie zmienia.
log-nothing-to-erase = W zapisie { $text } nie ma nic do wymazania.
log-print-hint = Wybierz miesiąc, aby wydrukować jego dziennik.
log-paper = Dziennik tego miesiąca na papierze
log-print = Drukuj ten dziennik
log-paper-title = Dziennik: { $month }
log-paper-part = Tylko część dziennika:
log-paper-table = Napełnienia w miesiącu
log-paper-corrected = Poprawiono { $when }, { $who }: { $why }
log-paper-struck = Skreślono { $when }, { $who }: { $why }
log-paper-unstruck = Znów się liczy od { $when }, { $who }: { $why }
log-paper-nobody = nikogo nie podano
log-paper-no-why = bez powodu
log-paper-totals = Sumy według produktu
log-assumed-in = { $n ->
    [one] { $n } napełnienia w sumach nie zmierzono i liczy się je jak w planie.
    [few] { $n } napełnień w sumach nie zmierzono i liczy się je jak w planie.
    [many] { $n } napełnień w sumach nie zmierzono i liczy się je jak w planie.
   *[other] { $n } napełnienia w sumach nie zmierzono i liczy się je jak w planie.
}
