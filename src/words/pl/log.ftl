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
log-stopped = Tego planu nie można zapisać: stoi mu na drodze ostrzeżenie.
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
log-other-rest = To napełnienie nie liczy się dla produktu { $product }. W zbiorniku może być reszta innego produktu: to, co w nim jest, i to, co wlewasz, może nie móc się spotkać.
log-other-way = Zobacz Ostrzeżenia, zanim napełnisz
log-reason = Dlaczego inaczej
log-notes = Uwagi
log-left-undone = Niezrobione, { $day }, { $machine }: { $tasks }. Zrób to, zanim napełnisz.
log-left-undone-unticked = Niezrobione, { $day }, { $machine }: nikt tego nie odhaczył po ostatnim napełnieniu. Obejrzyj maszynę, zanim napełnisz.
log-left-way = Odhacz to na końcu zmiany
remark-log-more = Odmierzono { $measured }, a w planie jest { $planned }. Zapisz to, jeśli tyle wlano.
remark-log-more-title = Więcej niż w planie
remark-log-less = Odmierzono { $measured }, a w planie jest { $planned }. Zapisz to, jeśli tyle wlano.
remark-log-less-title = Mniej niż w planie
remark-log-over-label = Odmierzono { $measured }. Przy tym napełnieniu decyduje etykieta: nie więcej niż { $most }. Zapisz, ile wlano, i napraw zbiornik, zanim zaczniesz nim czyścić.
remark-log-over-label-title = Za dużo: poza etykietą
remark-log-under-label = Odmierzono { $measured }. Przy tym napełnieniu decyduje etykieta: nie mniej niż { $least }. Zapisz, ile wlano, i napraw zbiornik, zanim zaczniesz nim czyścić.
remark-log-under-label-title = Za mało: poza etykietą
remark-log-under-minimum = Odmierzono { $measured }. Przy tym napełnieniu decyduje minimum prawne: nie mniej niż { $least }. Zapisz, ile wlano, i napraw zbiornik, zanim zaczniesz nim czyścić.
remark-log-under-minimum-title = Za mało: poniżej minimum
remark-log-over-standard = Odmierzono { $measured }. Przy tym napełnieniu decyduje wasz standard: nie więcej niż { $most }. Zapisz, ile wlano, i napraw zbiornik, zanim zaczniesz nim czyścić.
remark-log-over-standard-title = Za dużo: poza waszym standardem
remark-log-under-standard = Odmierzono { $measured }. Przy tym napełnieniu decyduje wasz standard: nie mniej niż { $least }. Zapisz, ile wlano, i napraw zbiornik, zanim zaczniesz nim czyścić.
remark-log-under-standard-title = Za mało: poza waszym standardem
remark-log-over-machine = Odmierzono { $measured }. Przy tym napełnieniu decyduje granica maszyny: nie więcej niż { $most }. Zapisz, ile wlano, i napraw zbiornik, zanim zaczniesz nim czyścić.
remark-log-over-machine-title = Za dużo: poza granicą maszyny
remark-log-under-machine = Odmierzono { $measured }. Przy tym napełnieniu decyduje granica maszyny: nie mniej niż { $least }. Zapisz, ile wlano, i napraw zbiornik, zanim zaczniesz nim czyścić.
remark-log-under-machine-title = Za mało: poza granicą maszyny
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
log-keep = Kopia i opieka
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
log-lost-line = { $device }: numer { $from } do { $to }
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
log-written-by = Zapis: { $who }.
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
log-station-hint = Zapisy, które tu robisz, podają tę nazwę, na przykład „Napełnianie, biblioteka”.
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
log-task-drain = Zbiorniki opróżnione
log-task-rinse = Zbiorniki wypłukane
log-task-filters = Filtry wyczyszczone
log-task-brush = Worek na śmieci lub szczotka czysta
log-task-squeegee = Belka ssąca wytarta
log-state-done = Zrobione
log-state-not-done = Niezrobione
log-state-not-asked = Nieodhaczone
