# Polish, in Fluent syntax: what Site says. No native reader has checked this file yet.

site-heading = Standardy twojego obiektu

finish-ph-low = Najniższe pH, które znosi
finish-ph-high = Najwyższe pH, które znosi
finish-coats = Warstwy
finish-coverage = Jedna warstwa pokrywa
finish-dry = Czas schnięcia między warstwami
finish-dry-hint = Z jej etykiety. Zostaw puste, aby oszacować z powietrza w pomieszczeniu.
finish-solids = Części stałe w powłoce
finish-cure = Czekaj do pierwszego mycia na mokro
coat-area = Podłoga do zmycia i powleczenia
strip-rate = Ile roztworu zmywacza się nakłada
strip-dwell = Zostaw roztwór zmywacza na
rinse-ph = pH ostatniego płukania
trial-batch = Roztwór na jedno pole próbne
standard-contact-hint = Zostaw puste, aby przyjąć to, czego wymaga etykieta.
standard-frequency = Jak często

site-parts = Co chcesz zrobić?
site-library = Kartoteka
site-standards = Standardy
site-finish = Nowa powłoka
site-paper = Wydruki
site-passing = Przekaż dalej
site-device = To urządzenie
site-undo = Cofnij ostatni krok
site-search = Szukaj
shelves = Co tu jest
shelf-machine = Maszyny ({ $n })
shelf-product = Produkty ({ $n })
shelf-floor = Podłogi ({ $n })
shelf-finish = Powłoki ({ $n })
shelf-measure = Miarki ({ $n })
shelf-area = Obszary ({ $n })
shelf-empty = Nic tu jeszcze nie ma. Dodaj pierwszy wpis.
shelf-none = Żaden nie ma tego w nazwie.
finish = Powłoka
finish-add = Dodaj powłokę
site-empty = Zacznij z pustym obiektem
site-empty-hint = Albo otwórz plik swojego obiektu w „Przekaż dalej”. Ten obiekt zostanie wtedy odłożony na bok.
mistake-same-name = Inny wpis na tej liście ma tę samą nazwę. Nikt by ich nie odróżnił.
record-troubles = Popraw to, zanim ktokolwiek użyje tego wpisu
record-none = Wybierz wpis z listy albo dodaj nowy.
record-retired = wycofane
record-copy = Kopiuj
record-retire = Wycofaj z użycia
record-back = Przywróć do użycia
record-remove = Usuń
finish-name = Nazwa powłoki
finish-source = Gdzie zapisano jej granice pH
finish-burnish = Tę powłokę się poleruje
floor-finish = Powłoka na niej
floor-finish-hint = Jej granice pH obowiązują też tę podłogę.
floor-finish-none = Bez powłoki
field-limit = { $low } do { $high }.

standards = Standardy
standards-none = Nie napisano jeszcze żadnego standardu. Standard mówi, jaki produkt i w jakim rozcieńczeniu dostaje podłoga, i dlaczego.
standard-title = { $name }, wersja { $version }
standing-draft = szkic
standing-in-force = obowiązuje
standing-waits = obowiązuje od { $day }
standing-replaced = zastąpiony
standard = Standard
standard-add = Napisz standard dla podłogi i produktu z Dozowania
standard-name = Nazwa standardu
standard-name-hint = Zostaw puste, aby nazwać go tak jak podłogę.
standard-floor = Dla tej podłogi
standard-floor-none = Nie ma jej w tym obiekcie
standard-product = Produkt
standard-product-none = Nie ma go w tym obiekcie
standard-dilution = Rozcieńczenie
standard-dilution-hint = Pisane jak na etykiecie, na przykład 1 to 64 lub 2 oz/gal. Może zawęzić zakres z etykiety, nigdy z niego wyjść.
standard-pad-hint = Jego stopień, tak jak nazywa go dostawca.
standard-order-hint = Zostaw puste, aby było jak zwykle: najpierw woda, potem koncentrat.
standard-effective = Pierwszy dzień, jako rok-miesiąc-dzień
standard-published = Opublikowano
standard-overrides = Ostrzeżenia, które dopuszczono
standard-left-out = Maszyny, dla których nie jest
standard-left-out-hint = Zaznacz maszynę, której według tego standardu nie wolno używać, i napisz dlaczego. Nie dostanie dawki.
leave = Nie dla: { $machine }
leave-reason = Dlaczego nie dla: { $machine }
reason-short = Napisz co najmniej dwa słowa albo dziesięć liter. Kto się tego trzyma, musi widzieć dlaczego.
standard-next = Napisz następną wersję
standard-remove = Usuń ten szkic
standard-changed = Po publikacji zmieniono maszynę, miarkę, podłogę, jej powłokę lub produkt. Napisz następną wersję i sprawdź ją od nowa.
standard-in-machines = Co daje w każdej maszynie
standard-doses = Koncentrat na pełny zbiornik
standard-no-setting = Żadna nie pasuje
standard-publish = Wprowadź w życie
standard-publish-later = Wprowadź w życie od { $day }
column-measure = Miarka
column-left = Zostaje na podłodze po jednym czyszczeniu
not-known = Nie wiadomo
yes = Tak
no = Nie

finding-none = Nic nie stoi na przeszkodzie.
finding-blocks = Przeszkoda: { $what }
finding-warns = Ostrzeżenie: { $what }
finding-machines = W: { $machines }
override = Twój powód, aby to dopuścić
override-hint = Zostaje w zapisie. Gdy pole jest puste, ostrzeżenie stoi na przeszkodzie.
publish-blocked = { $n ->
    [one] { $n } rzecz stoi na przeszkodzie. Najpierw ją popraw.
    [few] { $n } rzeczy stoją na przeszkodzie. Najpierw je popraw.
    [many] { $n } rzeczy stoi na przeszkodzie. Najpierw je popraw.
   *[other] { $n } rzeczy stoi na przeszkodzie. Najpierw je popraw.
}
publish-open = { $n ->
    [one] { $n } ostrzeżenie czeka na twój powód albo na zmianę.
    [few] { $n } ostrzeżenia czekają na twój powód albo na zmianę.
    [many] { $n } ostrzeżeń czeka na twój powód albo na zmianę.
   *[other] { $n } ostrzeżenia czeka na twój powód albo na zmianę.
}
finding-no-floor = Wybierz jego podłogę
finding-floor-retired = Jego podłogę wycofano z użycia
finding-no-product = Wybierz jego produkt
finding-product-retired = Jego produkt wycofano z użycia
finding-no-machine = Nie jest dla żadnej maszyny, która jest w użyciu
finding-left-out-why = Napisz, dlaczego pomija maszynę
finding-no-dilution = Wpisz jego rozcieńczenie
finding-dilution = Jego rozcieńczenia nie da się odczytać
finding-no-author = Podaj, kto go napisał
finding-no-reason = Napisz, dlaczego tak jest
finding-short-reason = Napisz, dlaczego tak jest, co najmniej dwoma słowami albo dziesięcioma literami
finding-same-name-title = Dwa o jednej nazwie
finding-same-name = Inny wpis też nazywa się „{ $name }”. Daj jednemu z nich inną nazwę.
finding-no-day = Podaj jego pierwszy dzień jako rok-miesiąc-dzień, na przykład 2026-03-01
finding-later-title = Jego pierwszy dzień dopiero nadejdzie
finding-later = Będzie obowiązywać od { $day }. Do dnia przedtem zostaje to, co obowiązuje teraz.
finding-never-title = Inny nigdy by się nie zaczął
finding-never = Wersja { $version } czeka na swój pierwszy dzień, { $day }. Ta zajmuje jej miejsce wcześniej.
finding-contact-title = Za krótko na podłodze
finding-contact = Według etykiety podłoga ma być mokra przez { $time }. Standard może wymagać więcej, nie mniej.
finding-replaced = Zastąpiono go
finding-unread = Jednej z jego liczb nie da się odczytać: popraw ją w jej polu
finding-film-title = Próba zostawiła nalot
finding-film = Na każdym polu, które ktoś obejrzał, został nalot. Wypróbuj słabszy roztwór albo spłucz.
finding-no-dose-title = Żadna miarka tego nie odmierzy
finding-no-dose = Żadna miarka w użyciu nie odmierzy dawki na pełny zbiornik. Zmień rozcieńczenie albo weź drobniejszą miarkę.
finding-no-setting-title = Brak nastawy wypływu
finding-no-setting = Nie wiadomo tego, czego Wypływ potrzebuje, aby wybrać nastawę. Wpisz to w Wypływie.
finding-residue-unknown-title = Pozostałość nieznana
finding-residue-unknown = Nikt nie wie, co zostaje na podłodze, a podłogi się nie spłukuje. Wpisz, co jest rozpuszczone w produkcie, albo każ spłukiwać podłogę.
finding-no-price-title = Koszt nieznany
finding-no-price = Produkt nie ma ceny lub opakowania. Wpisz jedno i drugie w Kartotece.

measure-lacking = Nie ma tu do wyboru: { $measures }. Najpierw musi to uzupełnić twój przełożony.
device-free = Ustaw to urządzenie na stanowisku napełniania
device-free-hint = Pokazuje wtedy tylko podłogi, dla których obowiązuje standard, każdą z jej produktem i dawką. Nic nie da się na nim zmienić, dopóki ktoś nie wpisze hasła.
device-locked = To urządzenie jest ustawione dla stanowiska napełniania
device-locked-hint = Pokazuje tylko to, co obowiązuje. Wpisz hasło, aby znów zmieniać wpisy i standardy.
device-code = Hasło
device-show = Pokaż
device-set = Ustaw
device-leave = Zwolnij
device-busy = Chwila
device-short = Hasło ma co najmniej cztery znaki.
device-wrong = To nie jest hasło. Nic nie zmieniono.
device-unable = Ta przeglądarka nie może tego tu zrobić: niczego nie przechowuje albo strony nie otwarto przez bezpieczne połączenie.
device-honest = Hasła nie przechowuje się jawnie. Chroni przed nieuważną ręką. Nie chroni przed nikim, kto może wyczyścić pamięć tej przeglądarki. Nie pamiętasz hasła? Zapisz najpierw kopię zapasową dziennika, w Dzienniku. Potem wyczyść pamięć przeglądarki dla tej strony: to usuwa też dziennik na tym urządzeniu. Potem otwórz znów plik swojego obiektu i kopię zapasową.

# paper
paper-heading = Na papierze
paper-standard = Standard do druku
paper-measure = Miarka na ścianie
paper-machine = Maszyna, którą otwiera kod
paper-trial = Próba do druku
paper-no-standard = Najpierw napisz standard. Tu będą wtedy jego plansza na ścianę, karta i etykiety.
paper-no-trial = Najpierw zaplanuj próbę. Tu będzie wtedy karta do zapisków przy polach próbnych.
paper-chart = Plansza
paper-sheet = Karta standardu
paper-labels = Etykiety pojemników
paper-patches = Karta próby
chart-print = Drukuj planszę na ścianę
standard-print = Drukuj standard
labels-print = Drukuj etykiety
trial-print = Drukuj kartę próby
paper-edition = Standard, wersja { $version }
paper-edition-from = Standard, wersja { $version }, od { $date }
paper-edition-until = { $edition }, do { $date }
paper-until = To obowiązuje do { $day }: od tego dnia trzymaj się standardu w wersji { $version }.
paper-draft = Szkic. Nie obowiązuje: nie trzymaj się go.
paper-waits = Nie obowiązuje przed { $day }. Do tego czasu trzymaj się tego, co obowiązuje teraz.
paper-left-out = Nie dla tego standardu: { $reason }
paper-replaced = Zastąpiony późniejszym standardem: nie trzymaj się go.
paper-chart-title = { $floor }: { $product }, { $dilution }
paper-let-pass = Dopuszcza { $author }: { $reason }
paper-doses = Dawka, miarka: { $measure }
paper-exactly = Pełny: dokładnie
paper-no-dose = Bez dawki
paper-makes-one = Daje 1 do { $n }
paper-makes-range = Daje od 1 do { $low } po 1 do { $high }
paper-makes = 1 do { $n }
paper-full-tank = Przy pełnym zbiorniku:
paper-no-setting = Brak nastawy wypływu: { $why }
paper-lacks = Tego wpisu ze standardu nie ma w tym obiekcie: { $what }. Wybierz go przed drukowaniem.
paper-lacks-label = Etykieta wymaga produktu ze standardu, maszyny i miarki. Jednego z nich brakuje w tym obiekcie.
paper-not-worked-out = Z tą miarką nie da się tego obliczyć. Obejrzyj to w Dozowaniu.
paper-not-written = Nie zapisano
paper-gone = Nie ma już w tym obiekcie
paper-ratio = Rozcieńczenie
paper-order = Kolejność
paper-wear-also = { $label } Też: { $own }
paper-wear-own = Załóż też
paper-foam = Piana
paper-contact-title = Czas kontaktu
paper-contact = Podłoga ma być mokra przez { $time }.
paper-contact-none = Nie wymaga się
paper-rinse-title = Płukanie
paper-rinse = Potem spłucz wodą.
paper-rinse-not = Nie wymaga się płukania. Gdzie wymaga go etykieta, trzymaj się jej.
paper-pad = Pad lub szczotka
paper-version = Wersja
paper-number = Numer
paper-effective = Obowiązuje od
paper-published = Opublikowano
paper-author = Napisał(a)
paper-reason = Powód
paper-overrides = Ostrzeżenia, które się tu nie liczą, i dlaczego
paper-overrides-none = Żadnego ostrzeżenia nie pominięto.
paper-history = Co zastąpił
paper-history-none = Jest pierwszy dla tej podłogi.
paper-product-at = { $product }, { $dilution }
paper-trial-title = { $product }, podłoga: { $floor }. Etykieta mówi: { $label }.
paper-batch = Na każde pole próbne wymieszaj { $batch }. Zaznacz każde pole na podłodze.
paper-patches-caption = Co wymieszać i co widać, gdy wyschnie
paper-patch = Pole
paper-gloss = Połysk, 60°
paper-film = Nalot
paper-slip = Tarcie mokre
paper-notes = Uwagi
paper-film-hint = Nalot: wpisz brak, lekki lub wyraźny. Tarcie mokre: z miernika tarcia. Liczba z miernika nie czyni podłogi bezpieczną.
paper-film-none = Brak
paper-film-slight = Lekki
paper-film-plain = Wyraźny
paper-into = na
paper-initials = Obejrzane przez (inicjały)
paper-date = Data
code-fill = Pełny zbiornik: { $machine }.
code-scan = Zeskanuj, aby otworzyć to napełnienie.
code-no-address = Nie drukuje się kodu: tę stronę otwarto tylko z tego urządzenia, a inne tu nie trafią. W „Wydruki” wpisz, gdzie otwierają ją inni: „Adres tej strony dla telefonów”.
code-wrong-address = Nie drukuje się kodu: „Adres tej strony dla telefonów” w „Wydruki” się nie nadaje. { $why }
site-address = Adres tej strony dla telefonów
site-address-hint = Od niego zaczynają się kody i linki. Skopiuj go z telefonu, na którym ta strona jest otwarta. Zostaw puste, aby przyjąć adres, z którego otwarto tę stronę.
address-scheme = Zaczyna się od https:// lub http://.
address-host = Za dwoma ukośnikami stoi nazwa komputera, na przykład floors.example, bez spacji, nazwy użytkownika i hasła.
address-port = Za dwukropkiem stoi numer portu, od 1 do 65535.
address-character = „{ $character }” nie może być w adresie. Skopiuj adres z paska adresu przeglądarki.
address-fragment = Pomiń znak krzyżyka i to, co stoi za nim.
address-loopback = Ten adres prowadzi każdy telefon do niego samego. Użyj tego, pod którym trafiają na tę stronę inne urządzenia.
code-none = Kod do skanowania ma tylko standard, który obowiązuje.
code-left-out = Standard nie jest dla maszyny wybranej wyżej: żaden kod nie otwiera dla niej napełnienia.
code-not-made = Z tego napełnienia nie da się zrobić kodu: nazwa lub uwaga zawiera coś, czego link nie pomieści. Obejrzyj je w Dozowaniu.
qr-label = Kod do zeskanowania telefonem: otwiera to napełnienie
qr-too-long = To napełnienie ma za dużo na kod, znaków: { $n }. Kod o boku 68 mm mieści 1␣465. Skróć uwagi o produkcie.

link-asks = Ten link zawiera napełnienie:
link-outdated = Twój obiekt ma wersję { $version } tego standardu od { $day }: kod jest nieaktualny.
link-outdated-undated = Twój obiekt ma wersję { $version } tego standardu: kod jest nieaktualny.
link-take = Pokaż to napełnienie
link-leave = Zostaw
link-locked = To urządzenie trzyma się swoich standardów i nie pokazuje innych napełnień.
link-refused = Tego linku nie otwarto.
link-shown = Twój własny obiekt odłożono na bok.
link-back = Wróć do swojego obiektu
locked-empty = Na tym urządzeniu nie obowiązuje żaden standard. Zapytaj przełożonego: w Obiekcie można zwolnić urządzenie i otworzyć plik obiektu.
link-cut-off = Brakuje jego końca. Zeskanuj go jeszcze raz albo poproś o niego jeszcze raz.
link-foreign = Ma znak, którego taki link nie ma.
link-altered = Nie jest taki, jakim go zrobiono.
link-later = Zrobiła go nowsza wersja Brimline. Wczytaj stronę ponownie, aby mieć tę wersję.
link-too-large = Zawiera więcej, niż link może.
link-content = Otwiera się, ale to, co zawiera, nie jest napełnieniem.

passing-give = Daj innym
passing-give-hint = Zapisz swój obiekt jako plik i otwórz go na drugim urządzeniu w „Przekaż dalej”. Nic nie idzie przez serwer.
passing-take = Weź od innych
site-save = Zapisz swój obiekt jako plik
passing-unread = Tu nie ma liczby: { $record }, { $field }, „{ $text }”; kto weźmie ten plik, nie dostanie z tego dawki.
passing-unread-signed = Najpierw popraw te liczby: plik, który podpisujesz, nie może mieć takiego miejsca.
passing-not-saved = Twojego obiektu nie da się zapisać tak, jak jest:
site-open = Otwórz plik obiektu
site-open-hint = Najpierw widać, co jest inne. Nic się nie zmienia, dopóki tego nie przyjmiesz.
passing-refused = Tego pliku nie otwarto. Nic nie zmieniono.
passing-site = Obiekt
passing-nothing = nic
passing-compare = Porównaj
passing-merge = Połącz oba
passing-merge-hint = Dochodzi to, co zmieniono tam od ostatniej wymiany. Zostaje to, co zmieniono tu.
passing-same = Jest taki sam jak twój.
passing-whole = To urządzenie jest powiązane z kluczem: to, co podpisane, przyjmuje się tak, jak jest.
passing-changes = { $n ->
    [one] { $n } zmiana. Odznacz, czego nie chcesz.
    [few] { $n } zmiany. Odznacz, czego nie chcesz.
    [many] { $n } zmian. Odznacz, czego nie chcesz.
   *[other] { $n } zmiany. Odznacz, czego nie chcesz.
}
passing-changes-whole = { $n ->
    [one] { $n } zmiana, przyjmowana tak, jak jest.
    [few] { $n } zmiany, wszystkie przyjmowane tak, jak są.
    [many] { $n } zmian, wszystkie przyjmowane tak, jak są.
   *[other] { $n } zmiany, wszystkie przyjmowane tak, jak są.
}
passing-no-number = Gdzie nie ma liczby, nic nie zaznaczono: zapytaj tego, kto dał ci ten plik. Jeśli mimo to zaznaczysz, czeka w swoim polu na poprawienie.
passing-no-number-whole = Gdzie nie ma liczby, zapytaj tego, kto dał ci ten plik: tego, co na niej stoi, nie oblicza się.
passing-more = I jeszcze { $n }.
passing-renamed = Niektóre nowe wpisy miały po obu stronach ten sam identyfikator: te z drugiego obiektu dostały nowe.
site-take = { $n ->
    [one] Przyjmij { $n } zmianę
    [few] Przyjmij { $n } zmiany
    [many] Przyjmij { $n } zmian
   *[other] Przyjmij { $n } zmiany
}
site-take-whole = Przyjmij ten obiekt
site-leave = Zostaw
passing-signed = Wydanie { $edition }, podpisane kluczem { $by }. Porównaj go z tym, który ci podano.
passing-signed-uncounted = Podpisane kluczem { $by }, zanim zaczęto liczyć wydania. Porównaj go z tym, który ci podano.
passing-saved = Zapisano jako wydanie { $edition }. Powiązane urządzenia, które je mają, nie przyjmą starszego.
passing-unsigned = Bez podpisu: nikt za to nie ręczy.
passing-altered = Zmieniono po podpisaniu.
passing-not-admitted-unsigned = Nie ma podpisu, a to urządzenie przyjmuje tylko to, co podpisano jego kluczem.
passing-not-admitted-altered = Zmieniono to po podpisaniu albo podpisano innym kluczem.
passing-not-admitted-other-key = Podpisano to kluczem { $by }, a to urządzenie przyjmuje tylko { $pinned }.
passing-not-admitted-older = To wydanie { $edition }, a to urządzenie ma już wydanie { $taken }. Poproś o najnowszy plik. (0 oznacza wydanie z czasu, zanim zaczęto je liczyć.)
passing-not-admitted-broken = Krok { $step } kluczy w tym pliku nie wynika z poprzedniego. Poproś o plik jeszcze raz.
place-path = W { $path }:
place-line = W wierszu { $line }, przy bajcie { $column }:
place-bytes = Po tylu bajtach: { $n }. Powód:
json-null = nic
json-flag = tak lub nie
json-number = liczba
json-text = tekst
json-list = lista
json-object = pola z nazwami
passing-too-large = plik jest większy niż { $n } B.
passing-not-text = to nie jest tekst.
passing-cut-off = plik kończy się za wcześnie.
passing-not-json = to nie jest JSON.
passing-too-deep = listy w listach, głębiej niż w jakimkolwiek obiekcie.
passing-field-twice = jedno pole stoi dwa razy.
passing-other-kind = to nie jest obiekt zapisany przez Brimline.
passing-later = zapisała to nowsza wersja ({ $schema }; ta zna { $known }). Wczytaj stronę ponownie, aby mieć tamtą wersję.
passing-missing = brakuje czegoś, co musi tu być.
passing-unknown-field = żaden taki plik nie ma tego pola.
passing-type = tu powinno być: { $expected }, a jest: { $found }.
passing-choice = „{ $text }” nie jest żadną z możliwości.
passing-long-text = tekst ma za dużo znaków: { $n }.
passing-long-list = lista ma za dużo pozycji: { $n }.
passing-hidden = ukryty znak ({ $text }).
passing-no-id = ten wpis nie ma identyfikatora.
passing-same-id = dwa wpisy mają identyfikator „{ $text }”.
passing-nowhere = wskazuje na „{ $text }”, a takiego wpisu nie ma: { $list }.
passing-circle = wpisy wskazują na siebie w kółko: { $text }.
passing-not-a-key = to nie jest klucz.
passing-not-a-signature = to nie jest podpis.
passing-not-an-edition = to nie jest numer wydania.
passing-unreadable = nie da się odczytać: { $text }
