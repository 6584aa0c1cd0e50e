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
