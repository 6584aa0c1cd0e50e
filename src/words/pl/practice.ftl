# Polish, in Fluent syntax: what exercises ask, what comes of an answer, the first fill. No native reader has checked
# this file yet.

## Topics and levels

practice-topic-label = Odczytaj etykietę
practice-topic-units = Zamień jednostki
practice-topic-dose = Odmierz dawkę
practice-topic-top-up = Dolej do zbiornika
practice-topic-setting = Wybierz nastawę wypływu
practice-topic-shift = Zaplanuj małą zmianę
practice-topic-mistake = Znajdź błąd
practice-topic-rescue = Popraw za mocny roztwór
practice-topic-ppe = Wybierz, co założyć
practice-topic-pairs = Czego nigdy nie łączyć
practice-topic-foam = Piana
practice-level-first = Poziom 1
practice-level-first-is = Jeden krok i łatwe liczby. Etykieta jest wyjaśniona.
practice-level-second = Poziom 2
practice-level-second-is = Etykieta tak, jak ją wydrukowano, niepełne zbiorniki i różne jednostki.
practice-level-third = Poziom 3
practice-level-third-is = Zakres do wyboru. Limity maszyny. Reszta w zbiorniku. Jednostki imperialne.

## What is missing for a topic

practice-lack-machine = Najpierw dodaj maszynę z jej zbiornikiem.
practice-lack-label = Najpierw dodaj produkt z etykietą, którą da się odczytać.
practice-lack-liquid = Najpierw dodaj płynny produkt z etykietą, którą da się odczytać.
practice-lack-measure = Najpierw dodaj dzbanek, kubek, nakrętkę lub pompkę i wpisz, ile to jedna kreska.
practice-lack-settings = Najpierw dodaj maszynę z jej szerokością czyszczenia, prędkością i dwiema nastawami wypływu.
practice-lack-floor = Najpierw dodaj podłogę i wpisz, ile roztworu ma dostać.
practice-lack-hazards = Najpierw dodaj produkt z kodami zagrożeń z jego etykiety.
practice-lack-nothing-fits = Te zbiorniki, etykiety i miarki do siebie nie pasują. Spróbuj dokładniejszej miarki.

## The parts of a task

practice-label = Etykieta produktu { $product } mówi „{ $label }”.
practice-measure-us = Jej oz i gal to jednostki USA.
practice-measure-imperial = Jej oz i gal to jednostki imperialne.
practice-aim-low = Weź najmniej, na ile pozwala etykieta.
practice-aim-high = Weź najwięcej, na ile pozwala etykieta.
practice-means-plus-water = Znaczy to 1 część produktu i tyle części wody.
practice-means-of-total = Znaczy to 1 część produktu w tylu częściach całego roztworu.
practice-means-per-water = Znaczy to tyle produktu dodanego do tyle wody.
practice-means-made-up = Znaczy to tyle produktu w tyle całego roztworu.
practice-means-percent = Znaczy to części produktu w 100 częściach całego roztworu.
practice-means-per-tank = Znaczy to tyle produktu na pełny zbiornik.
practice-means-powder = Znaczy to masę proszku na tyle roztworu.
practice-means-active = Znaczy to części substancji czynnej w milionie części roztworu.
practice-means-packets = Znaczy to całe saszetki lub tabletki na tyle roztworu.
practice-tank = Zbiornik maszyny { $machine } mieści { $tank }.
practice-machine = Maszyna to { $machine }.
practice-machine-least = Maszyna potrzebuje w pełnym zbiorniku co najmniej { $amount } produktu.
practice-machine-most = Maszyna przyjmuje w pełnym zbiorniku najwyżej { $amount } produktu.
practice-standard = Zasada twojego obiektu mówi „{ $rule }”.
practice-fill-full = Napełniasz go do pełna. Woda i produkt razem dają pełny zbiornik.
practice-fill-part = Napełniasz go do { $fill }. Do tej kreski sięgają woda i produkt razem.
practice-fill-on-top = Wlewasz { $fill } wody. Produkt dochodzi do tego osobno.
practice-jug = Odmierzasz tym: { $measure }. Jedna kreska, naciśnięcie lub nakrętka to { $step }.
practice-tested = Zrobiono próbę wstrząsania. Nie pieni się.
practice-rest-same = Jest w nim jeszcze { $left } tego samego roztworu. Ma właściwe stężenie.
practice-rest-other = Jest w nim jeszcze { $left } roztworu tego samego produktu. Wymieszano { $parts } części wody na 1 część produktu.
practice-top-up-full = Dolewasz do pełna.
practice-top-up-part = Dolewasz do { $fill }.
practice-found = Jest w nim { $found } roztworu, a z tego { $poured } to produkt. To za mocne.
practice-floor = Ta podłoga ma dostać { $low } do { $high }: { $floor }.
practice-speed = Jedzie z prędkością { $speed }.
practice-path = Czyści pas o szerokości { $path }.
practice-path-overlap = Czyści pas o szerokości { $path }. Zakładka dwóch przejazdów to { $overlap }.
practice-area = Czyścisz { $area } tej podłogi: { $floor }. Dajesz na nią { $rate }.
practice-area-plain = Czyścisz { $area } i dajesz na podłogę { $rate }.
practice-reuse = Maszyna używa ponownie { $reuse } swojego roztworu.
practice-ppe = Nalewasz produkt { $product }. Hasło ostrzegawcze na etykiecie: { $signal }.
practice-ppe-says = Etykieta mówi: { $statement }.
practice-ppe-codes = Kody na etykiecie to { $codes }.
practice-ppe-no-codes = W jego wpisie nie ma kodów zagrożeń.
practice-ppe-nothing = Nic: etykieta niczego nie wymaga
practice-pair = { $a } i { $b }
practice-foam-product = Jak się pieni produkt { $product }: { $class }.
practice-foam-any-product = Masz nowy produkt. Jak się pieni: { $class }.
practice-foam-vacuum = { $machine } zbiera roztwór odsysaniem.
practice-foam-no-vacuum = { $machine } nie ma odsysania.
practice-foam-any-machine = Twoja maszyna zbiera roztwór odsysaniem.
practice-foam-shaken = Robisz próbę wstrząsania. Tuż potem piana ma wysokość { $first }. Po minucie ma wysokość { $later }.
practice-foam-happens = Używasz produktu { $product }. Piana przelewa się ze zbiornika.
practice-foam-happens-any = Piana przelewa się ze zbiornika.
practice-setting-rate = Nastawa { $n }: daje { $amount }
practice-setting-flow = Nastawa { $n }: { $amount }
practice-setting-none = Żadna z nich
practice-ticket-water-first = Karta napełnienia mówi: najpierw wlano wodę.
practice-ticket-product-first = Karta napełnienia mówi: najpierw wlano produkt.
practice-ticket-poured = Wlano produktu: { $poured }.
practice-ticket-nothing = Nic nie poszło źle
practice-ticket-is-right = Karta jest dobra.
practice-ticket-is-wrong = W karcie jest błąd.

## What is asked

practice-ask-convention = Co znaczy etykieta?
practice-ask-parts = Ile części ma cały roztwór?
practice-ask-percent = Jaki procent roztworu to produkt? Podaj trzy cyfry.
practice-ask-units = { $amount } to ile { $unit }? Podaj trzy cyfry.
practice-ask-dose = Ile produktu wlewasz? Pół kreski mniej lub więcej też będzie dobrze.
practice-ask-top-up = Ile produktu dodajesz? Pół kreski mniej lub więcej też będzie dobrze.
practice-ask-setting = Która najniższa nastawa daje podłodze dość, a nie za dużo?
practice-ask-solution = Ile roztworu potrzebujesz? Podaj trzy cyfry.
practice-ask-fills = Ile razy napełniasz zbiornik?
practice-ask-product = Ile produktu potrzebujesz na oba obszary? Podaj trzy cyfry.
practice-ask-mistake = Co poszło źle?
practice-ask-rescue-water = Ile wody dodajesz, aby było dobrze? Podaj trzy cyfry.
practice-ask-rescue-drain = Nie ma miejsca na całą potrzebną wodę. Ile najpierw spuszczasz, aby pełny zbiornik był dobry? Podaj trzy cyfry.
practice-ask-ppe = Czego potrzebujesz? Wybierz wszystko, co trzeba.
practice-ask-pair = Których dwóch nigdy nie wolno łączyć?
practice-ask-pairs = Które z nich trzymasz osobno? Wybierz wszystkie pary, których nigdy nie wolno łączyć, i wszystkie, gdzie o jednym nic nie wiadomo.
practice-ask-foam = Co robisz?
practice-ask-foam-class = Jaki to rodzaj produktu?
practice-ask-foam-order = Co robisz i w jakiej kolejności?

## What came of it

practice-answer = Twoja odpowiedź
practice-choose = Najpierw wybierz odpowiedź.
practice-above-nothing = Odpowiedzią musi być jakaś ilość. Wpisz liczbę większą od zera.
practice-no-try = Nie liczy się to jako próba.
practice-as-given = To ilość taka, jak w zadaniu. Podaj ją w { $unit }.
practice-answer-poured = { $n ->
    [one] { $exact }; twoją miarką { $poured }, { $n } kreska
    [few] { $exact }; twoją miarką { $poured }, { $n } kreski
    [many] { $exact }; twoją miarką { $poured }, { $n } kresek
   *[other] { $exact }; twoją miarką { $poured }, { $n } kreski
 }
practice-right = Dobrze.
practice-rounded = Dobrze dla twojej miarki. W trzech cyfrach to { $exact }.
practice-wrong = Jeszcze nie. Przeczytaj zadanie jeszcze raz.
practice-step = { $what }: { $symbol } = { $equation }. Gdy { $given }, to { $symbol } = { $result }.
practice-so = Odpowiedź to { $answer }.
practice-because-units = { $one } to { $many }.
practice-because-standard = Zasada twojego obiektu mieści się w etykiecie. To ona decyduje.
practice-because-setting = Oblicz, ile daje każda nastawa. Weź najniższą z tych, które dają co najmniej tyle, ile podłoga ma dostać.
practice-because-rescue = Produktu jest tyle samo. Przybywa tylko wody. Poczekaj, aż się wymiesza, i zmierz stężenie jeszcze raz.
practice-because-wear = { $piece }. Na etykiecie jest { $code }: „{ $statement }”
practice-because-wear-unknown = { $piece }. Nie cała etykieta jest znana, więc wymaga tego gorszy przypadek.
practice-because-nothing = Ktoś przeczytał etykietę i nie znalazł zagrożenia. Mimo to załóż to, czego wymaga twój obiekt.
practice-because-other-step = Najbliższa kreska to więcej lub mniej, niż pozwalają zasady. Weź następną.
practice-because-no-vacuum = Nie ma odsysania, które mogłoby wciągnąć pianę.
practice-because-little-foam = Tak mało piany nie dochodzi do odsysania.
practice-because-unknown = Strona nie zna całej etykiety. Czego nie wiadomo, liczy się jak gorszy przypadek.

## Wrong roads, and what to do instead

practice-way-parts-for-total = Blisko. Etykietę odczytano jako części całego roztworu. Ona liczy części wody. Dodaj 1 na produkt.
practice-way-total-for-parts = Blisko. Etykietę odczytano jako części wody. Ona liczy cały roztwór. Jedną z tych części jest produkt.
practice-way-water-for-mix = Blisko. Wodę wzięto za cały roztwór. Produkt dochodzi do wody.
practice-way-mix-for-water = Blisko. Cały roztwór wzięto za wodę. Część z niego to produkt.
practice-way-other-reading = To inny sposób zapisu. Spójrz jeszcze raz na słowa i znaki na etykiecie.
practice-way-full-for-part = To jest na pełny zbiornik. Napełniasz tylko część. Weź taką samą część produktu.
practice-way-full-for-rest = To jest na całe napełnienie. W reszcie w zbiorniku jest już produkt. Odejmij go.
practice-way-ounces-for-millilitres = Uncje zapisano jako mL. Spójrz na jednostkę swojej miarki. Jedna uncja płynu (fl oz) USA to około 30 mL.
practice-way-millilitres-for-ounces = mL zapisano jako uncje. Spójrz na jednostkę swojej miarki. Jedna uncja płynu (fl oz) USA to około 30 mL.
practice-way-us-for-imperial = Użyto jednostek USA. Te tutaj są imperialne. Galon imperialny jest o jedną piątą większy niż galon USA.
practice-way-imperial-for-us = Użyto jednostek imperialnych. Te tutaj są z USA. Galon USA jest o jedną szóstą mniejszy niż galon imperialny.
practice-way-weight-for-volume = Uncja masy to nie uncja płynu. Do płynów używaj uncji płynu.
practice-way-upside-down = To poszło w odwrotną stronę. Odwróć: dziel tam, gdzie było mnożenie.
practice-way-decimal-slip = Przecinek przesunął się o jedno miejsce. Policz zera jeszcze raz.
practice-way-other-end = To drugi koniec zakresu. Spójrz, o który koniec pyta zadanie.
practice-way-machine-ignored = Maszyna ma własny limit. Porównaj z nim swoją liczbę.
practice-way-standard-ignored = Twój obiekt ma na to zasadę. Porównaj z nią swoją liczbę.
practice-way-rest-ignored = Reszta ma inne stężenie. Oblicz, ile jest w niej produktu, i odejmij to.
practice-way-end-for-added = Tyle masz na końcu. Zadanie pyta, ile dodajesz lub spuszczasz.
practice-way-same-again = Wzięto drugie tyle. Jest to dobre tylko wtedy, gdy roztwór jest dwa razy za mocny.
practice-way-room-ignored = To woda, która się nie zmieści. Część mocnego roztworu trzeba spuścić, a z nią ubywa produktu.
practice-way-thousand = Ta ilość jest na tysiąc. Podziel przez 1 000.
practice-way-rounded-down = Ostatnia część zbiornika to też napełnienie. Zaokrąglij w górę.
practice-way-not-whole = Napełnia się całą liczbę razy. Zaokrąglij w górę do następnej całej.
practice-way-reuse-ignored = Maszyna używa części roztworu ponownie. Zużywa się tylko reszta.
practice-way-one-area-only = To jest na jeden obszar. Dodaj drugi.
practice-way-mix-for-product = To jest cały roztwór. Tylko mała część z niego to produkt.
practice-way-product-first = Najpierw woda, potem produkt. Mniej pryska i mniej się pieni.
practice-way-too-dry = To za mało. Brud zostaje na podłodze. Weź wyższą.
practice-way-too-wet = To za dużo. Podłoga zostaje mokra i śliska. Weź niższą.
practice-way-more-than-needed = To by wystarczyło, ale niższa też wystarczy. Weź niższą.
practice-way-none-thought = Jedna z nich pasuje. Oblicz, ile daje każda.
practice-way-overlooked = Jest tu błąd. Oblicz dawkę i porównaj ją z kartą.
practice-way-false-alarm = Karta jest dobra. Oblicz dawkę i porównaj ją z kartą.
practice-way-other-mistake = To inny błąd. Oblicz dawkę, a potem zobacz, jaka pomyłka prowadzi do liczby na karcie.
practice-way-no-eyes = Twoje oczy są bez ochrony. Zobacz, co etykieta mówi o oczach.
practice-way-no-skin = Twoja skóra jest bez ochrony. Zobacz, co etykieta mówi o skórze.
practice-way-no-air = Pomyśl o powietrzu, którym oddychasz. Zobacz, co etykieta o nim mówi.
practice-way-more-than-asked = To więcej, niż wymaga etykieta. Twój obiekt może mimo to tego wymagać.
practice-way-pair-missed = Spójrz jeszcze raz. Brakuje pary, której nigdy nie wolno łączyć.
practice-way-unknown-cleared = Nikt nie wie, co jest w jednym z nich. Czego nie wiadomo, trzyma się osobno.
practice-way-pair-not-listed = Dla tej pary nie ma znanego konfliktu. Mimo to nigdy nie mieszaj celowo.
practice-way-foam-let-in = Pieni się. Nie może trafić do maszyny z odsysaniem.
practice-way-not-tested = Nikt go nie sprawdził. Do tego czasu liczy się jak pieniący.
practice-way-kept-out = Dane mówią co innego. Zobacz, jak wysoka jest piana, jak szybko opada i czy jest odsysanie.
practice-way-not-stopped = Najpierw zatrzymaj maszynę. Wszystko inne może poczekać.
practice-way-order-mixed = Pierwszy krok jest dobry. Spójrz na kolejność pozostałych.
practice-way-as-given = To ilość taka, jak w zadaniu. Podaj ją w jednostce, o którą pyta zadanie.
practice-way-round-factor = Wzięto okrągłą liczbę dla jednostki, na przykład 30 mL na uncję. Do szacowania wystarczy. Tu liczą się trzy cyfry.

## What a wrong answer could do

practice-harm-over-label = To więcej, niż pozwala etykieta. Za mocny roztwór może poparzyć skórę, zniszczyć podłogę i zostawić śliski nalot.
practice-harm-forbidden-pair = W pracy ktoś mógłby przez to ucierpieć. Tych dwóch nie wolno łączyć.
practice-harm-no-eyes = W pracy można przez to stracić wzrok. Wystarczy jeden rozprysk.
practice-harm-no-skin = W pracy mogłoby ci to poparzyć skórę.
practice-harm-no-air = W pracy mogłoby ci to uszkodzić płuca.
practice-harm-foam = W pracy piana mogłaby dojść do silnika ssącego i zatrzymać maszynę.
practice-harm-splash = W pracy mocny produkt mógłby na ciebie prysnąć.

## Mistakes on a fill ticket

practice-made-parts-for-total = Części wody wzięto za części całego roztworu
practice-made-total-for-parts = Części całego roztworu wzięto za części wody
practice-made-water-for-mix = Wodę wzięto za cały roztwór
practice-made-mix-for-water = Cały roztwór wzięto za wodę
practice-made-full-for-part = Dawka jest na pełny zbiornik
practice-made-ounces-for-millilitres = Uncje zapisano jako mL
practice-made-millilitres-for-ounces = mL zapisano jako uncje
practice-made-us-for-imperial = Zamiast galonów imperialnych użyto galonów USA
practice-made-imperial-for-us = Zamiast galonów USA użyto galonów imperialnych
practice-made-other-end = Użyto złego końca zakresu
practice-made-machine-ignored = Pominięto limit maszyny
practice-made-standard-ignored = Pominięto zasadę obiektu
practice-made-product-first = Produkt wlano przed wodą

## Sessions and their codes

practice-session-no-topic = Najpierw wybierz temat.
practice-session-count = Ta liczba zadań się nie mieści. Wybierz mniej.
practice-session-lacks = Jednego tematu nie da się zrobić z twoich wpisów. Usuń go z wyboru albo dodaj to, czego potrzebuje.
practice-session-fewer = Nie ma tylu różnych zadań. Wybierz mniej zadań albo więcej tematów.
practice-session-link = Ten zestaw nie mieści się w kodzie. Wybierz mniej tematów albo rozdaj go na papierze.
practice-code-altered = Ten kod nie jest taki, jakim go zrobiono. Sprawdź każdą literę.
practice-code-later = Ten kod pochodzi z nowszej wersji. Zaktualizuj stronę.
practice-code-initials = Wpisz swoje inicjały, najwyżej cztery litery.
practice-code-day = Wpisz dzień jako rok-miesiąc-dzień.
practice-code-session = Ten wynik nie należy do żadnego zestawu.
practice-code-marks = Nie ma jeszcze czego oddać.
practice-class-other = Ten wynik nie jest z tego zestawu.
practice-class-twice = Ten wynik jest już na liście.
practice-class-ahead = Jego dzień jest późniejszy niż dzień na tym urządzeniu. Sprawdź zegary obu.
practice-class-erased = W dzienniku jest taki wynik, a inicjały wymazano na prośbę. Przyjmij go tylko, jeśli ta osoba tego chce. Będzie to wtedy nowy zapis.

## The page

practice-heading = Jak postąpisz?
practice-about = Zadania z twoich własnych maszyn, produktów i podłóg. Nic, co tu robisz, nie zmienia twojego obiektu ani dziennika.
practice-governs = To są ćwiczenia. W pracy decydują etykieta, jej karta charakterystyki, zasady twojego obiektu i przeszkoleni ludzie.
practice-parts = Co tu zrobić
practice-practise = Ćwicz
practice-numbers = Zobacz liczby
practice-hand-out = Rozdaj
practice-class = Wyniki grupy
practice-choose-heading = Wybierz, co ćwiczyć
practice-topics = Tematy
practice-topics-all = Wybierz wszystkie tematy
practice-topics-none = Odznacz tematy
practice-level = Poziom
practice-count = Ile zadań
practice-count-hint = Najwyżej { $most }.
practice-seed = Numer grupy
practice-seed-hint = Ten sam numer daje te same zadania na każdym urządzeniu z tymi samymi wpisami. Zostaw puste, aby dostać nowe.
practice-session-seed = Numer grupy ma tylko cyfry i wynosi najwyżej 4 294 967 295.
practice-begin = Zacznij
practice-stock = Zrobione z
practice-made-of = { $site }: maszyny { $machines }, produkty { $products }, podłogi { $floors }, miarki { $measures }
practice-check-is = zestaw { $check }
practice-tasks = { $n ->
    [one] { $n } zadanie
    [few] { $n } zadania
    [many] { $n } zadań
   *[other] { $n } zadania
 }
practice-progress = { $n } z { $of }
practice-check = Sprawdź
practice-next = Dalej
practice-end = Zobacz wynik
practice-skip = Pomiń to
practice-wrong-last = To nie to. Zobacz, jak się to oblicza.
practice-once-more = Masz jeszcze jedną próbę.
practice-right-is = Odpowiedź to: { $answer }
practice-from = Te wpisy są z obiektu { $site }.
practice-stop = Przerwij ten zestaw
practice-stop-hint = To, co w nim zrobiono, zniknie. Aby wrócić później, po prostu opuść stronę: zestaw poczeka.
practice-leave = Przerwij i usuń
practice-order-hint = Ułóż je w kolejności. Pierwszy krok jest pierwszy.
practice-up = Wyżej
practice-down = Niżej
practice-up-of = Wyżej: { $what }
practice-down-of = Niżej: { $what }
practice-drawing = Kubek z { $dose } produktu, jedna kreska to { $step }. Obok zbiornik { $tank } napełniony do { $total }. Warstwa na dnie zbiornika to produkt, 1 część na { $ratio } części wody.
practice-drawing-cup = Produkt
practice-picture-ratio = To jest 1 do { $ratio }. Warstwa na dnie zbiornika to cały produkt w nim.
practice-picture-half = Jedna kreska twojego kubka to { $step }. Pół kreski mniej daje 1 do { $less }. Pół kreski więcej daje 1 do { $more }.

## See the numbers

numbers-about = Zmień liczbę i zobacz, co się dzieje. Nic innego się nie zmienia.
numbers-mix = Stosunek w zbiorniku
numbers-machine = Zbiornik
numbers-own = Moja własna liczba
numbers-tank = Zbiornik mieści
numbers-level = Jak jest pełny
numbers-parts = Stosunek
numbers-parts-hint = Części wody na 1 część produktu. Wpisz 64 lub 1:64.
numbers-usual = Zwykłe stosunki
numbers-slider = Przesuń stosunek:
numbers-ratio = 1 do { $n }
numbers-measure = Miarka
numbers-step = Jedna kreska kubka
numbers-none = Nie ma jeszcze obrazka. Popraw liczbę zaznaczoną wyżej.
numbers-to-scale = W jednej skali: zbiornik i produkt, każdy jako sześcian widziany z przodu. Cienka warstwa na dnie zbiornika to ten sam produkt.
numbers-enlarged = Jeszcze raz kubek, powiększony, z jego kreskami. Pas to pół kreski w górę i w dół.
numbers-count = { $n ->
    [one] Najbliżej jest { $n } kreska po { $step }, czyli { $rounded }. Daje to 1 do { $ratio }.
    [few] Najbliżej są { $n } kreski po { $step }, czyli { $rounded }. Daje to 1 do { $ratio }.
    [many] Najbliżej jest { $n } kresek po { $step }, czyli { $rounded }. Daje to 1 do { $ratio }.
   *[other] Najbliżej jest { $n } kreski po { $step }, czyli { $rounded }. Daje to 1 do { $ratio }.
 }
numbers-half = Co robi pół kreski
numbers-less = Pół kreski mniej
numbers-asked = Jak trzeba
numbers-nearest = Najbliższa kreska
numbers-more = Pół kreski więcej
numbers-column-pour = Wlewasz
numbers-column-product = Produkt
numbers-column-ratio = Stosunek
numbers-column-off = Różnica
numbers-drawing-scale = Zbiornik { $tank } jako sześcian o szerokości { $tank_edge }, napełniony do { $total }. Obok { $dose } produktu z niego jako sześcian o szerokości { $dose_edge }. Oba narysowano w jednej skali.
remark-numbers-coarse = Pół kreski tego kubka to tyle, co cały produkt. Wybierz dokładniejszą miarkę lub pełniejszy zbiornik.
numbers-film = Warstwa na podłodze
numbers-laid = Jak to podajesz
numbers-laid-rate = Wiem, ile daję na podłogę
numbers-laid-setting = Nastawą wypływu
numbers-rate = Ile dajesz na podłogę
numbers-setting = Nastawa
numbers-setting-of = { $machine }, nastawa { $n }
numbers-flow = Wypływ
numbers-speed = Prędkość
numbers-path = Szerokość
numbers-overlap = Zakładka
numbers-film-scale = Płytka z boku, a obok niej kartka papieru. Wysokość narysowano w skali większej { $times } razy niż szerokość.
numbers-film-assumed = To warstwa tuż po nałożeniu, wszędzie równa. Prawdziwa podłoga ma jej więcej w fugach i zagłębieniach. Przyjęto, że kartka papieru biurowego ma 0,1 mm grubości, a płytka 12 in lub 30 cm szerokości: powszechna praktyka, bez źródła. Masa jest masą wody o temperaturze 20 °C, 998 g na litr.
numbers-tile-is = płytka, szerokość { $edge }
numbers-paper = papier
numbers-drawing-film = Płytka o szerokości { $edge } z boku, a na niej warstwa o grubości { $thick }. Obok niej kartka papieru o grubości { $paper }. Wysokość narysowano w skali większej { $times } razy niż szerokość.
figure-numbers-total = Roztwór w zbiorniku
figure-numbers-water = Woda w nim
figure-numbers-dose = Produkt w nim
figure-numbers-tank-edge = Krawędź zbiornika jako sześcianu
figure-numbers-dose-edge = Krawędź produktu jako sześcianu
figure-numbers-rate = Ile się daje
figure-numbers-thickness = Grubość warstwy
figure-numbers-weight = Ile waży
figure-numbers-tile = Na jednej płytce
figure-numbers-sheets = Ile kartek ma tę grubość
formula-film-mass = Masa w warstwy na każdej powierzchni, z tego, ile się jej daje, i gęstości ρ wody

practice-picture-tanks = Warstwa na dnie to cały produkt w zbiorniku. Gdzie jej nie widać, jest cieńsza niż linia.
practice-picture-rates = Pasek dla każdej nastawy, przy jej numerze. Dobra jest najniższa, która kończy się w zaznaczonym zakresie. Gdy żaden pasek się w nim nie kończy, żadna nie jest dobra.
practice-picture-mix = Cały roztwór na obszar, jako jeden pasek.
practice-picture-strip = Roztwór od pierwszego do ostatniego. Kreska z numerem stoi tam, gdzie napełniasz zbiornik.
practice-picture-range = Na ile pozwala etykieta, od zera w górę. Linia przerywana to to, o co pyta zadanie.
practice-picture-range-parts = To 1 część produktu i { $n } części wody, razem { $all } części.
practice-picture-scales = Obie strony pokazują tę samą ilość.
practice-picture-wear = Przed czym ostrzega etykieta i co na to zakładasz.
practice-picture-shaken = Niskopieniący: po minucie piana sięga najwyżej do linii przerywanej i opadła do jednej trzeciej lub niżej. Powszechna praktyka, bez źródła.
practice-picture-foam = Piana nie może trafić do odsysania. Sprawdź to, czego nikt nie sprawdził.
practice-state-before = przedtem
practice-state-topped = dolano
practice-state-found = zastano
practice-state-drained = spuszczono
practice-state-rescued = poprawiono
practice-drawing-state = { $when }: { $mix }, a w tym { $product } produktu
practice-drawing-tanks = Zbiornik { $tank }, krok po kroku. { $states }.
practice-drawing-mix = Pasek: { $total } roztworu na jeden obszar.
practice-drawing-strip = { $n ->
    [one] Pasek: { $total } roztworu według obszarów: { $areas }. To { $n } napełnienie zbiornika.
    [few] Pasek: { $total } roztworu według obszarów: { $areas }. To { $n } napełnienia zbiornika.
    [many] Pasek: { $total } roztworu według obszarów: { $areas }. To { $n } napełnień zbiornika.
   *[other] Pasek: { $total } roztworu według obszarów: { $areas }. To { $n } napełnienia zbiornika.
 }
practice-drawing-range = Pasek tego, na co pozwala etykieta: { $range }.
practice-drawing-range-asked = Pasek tego, na co pozwala etykieta: { $range }. Zadanie pyta o { $asked }.
practice-drawing-scales = Jedna linia z dwiema skalami: { $from } u góry to { $to } u dołu.
practice-drawing-bottles = Dwie butelki, a między nimi przegroda: { $a } i { $b }.
practice-drawing-shaken = Dwie butelki po wstrząśnięciu. Od razu piana ma wysokość { $first }, po minucie { $later }. Linia przerywana jest na wysokości { $limit }.
practice-drawing-foam-none = Zbiornik bez piany.
practice-drawing-foam-no-vacuum = Zbiornik, który może się pienić, a nad nim nie ma odsysania.
practice-drawing-foam-unknown = Zbiornik, który może się pienić. Wąż nad nim prowadzi do silnika ssącego.
practice-drawing-foam-vacuum = Zbiornik pełen piany. Piana idzie wężem w górę do silnika ssącego.
practice-foam-at-once = od razu
practice-foam-after = po 1 min
practice-foam-motor = silnik
practice-foam-tank = zbiornik
practice-ticket-should = Powinno tu być: { $line }

## The result

practice-result = Twój wynik
practice-tries-first = Dobrze od razu: { $n } z { $of }
practice-tries-second = Dobrze za drugim razem: { $n } z { $of }
practice-tries-later = Dobrze później: { $n } z { $of }
practice-tries-never = Źle: { $n } z { $of }
practice-tries-open = Pominięto: { $n } z { $of }
practice-roads = Co warto obejrzeć jeszcze raz
practice-hand-in = Oddaj wynik
practice-initials = Twoje inicjały
practice-initials-hint = Tylko jeśli oddajesz wynik. Najwyżej cztery litery, bez pełnego nazwiska.
practice-code = Twój kod
practice-code-qr = Kod twojego wyniku, do zeskanowania
practice-code-save = Zapisz kod jako plik
practice-code-holds = Kod zawiera twoje inicjały, dzień ({ $date }) i wynik każdego zadania. Nic się nie wysyła. Pokaż go lub przekaż dalej.
practice-finish = Gotowe. Wybierz nowe zadania
practice-copy = Kopiuj
practice-copied = Skopiowano.
practice-marked = Jest zaznaczony. Skopiuj go klawiaturą.

## A session that a link brings

practice-offer = Zestaw dla ciebie
practice-offer-hint = Ten link zawiera zestaw zadań. Najpierw go zacznij albo zostaw: potem reszta Ćwiczeń jest tu znowu. Twój własny obiekt się nie zmienia.
practice-offer-same = Ten zestaw jest już zaczęty. Możesz robić go dalej.
practice-offer-other = Masz zaczęty inny zestaw. Jeśli zaczniesz ten, tamten zniknie.
practice-offer-go-on = Wróć tam, gdzie przerwano
practice-offer-begin = Zacznij ten zestaw
practice-offer-leave = Zostaw
practice-link-content = Otwiera się, ale to, co zawiera, nie jest zestawem zadań.

## Handing out

practice-hand-out-heading = Rozdaj zestaw zadań
practice-hand-out-hint = Wybierz tematy, potem utwórz zestaw. Każdy, kto zeskanuje jego kod, dostaje te same zadania, bez sieci.
practice-make = Rozdaj ten zestaw
practice-given-heading = Zestaw
practice-given = Który zestaw
practice-given-one = Numer grupy { $seed }, { $level }, zadania: { $n } ({ $check })
practice-smaller = Kod nie mieści wszystkich wpisów. Ten zestaw używa pierwszego z każdej listy.
practice-qr = Kod do zeskanowania telefonem: otwiera ten zestaw
practice-scan = Zeskanuj, aby otworzyć ten zestaw. Przedtem otwórz stronę raz na każdym urządzeniu, aby działała bez sieci.
practice-link = Link
practice-paper = Zestaw na papierze
practice-tasks-print = Drukuj zadania
practice-key-print = Drukuj odpowiedzi
practice-both-print = Drukuj oba
practice-paper-tasks = Zadania, numer grupy { $seed }, zestaw { $check }
practice-paper-key = Klucz odpowiedzi, numer grupy { $seed }, zestaw { $check }
practice-paper-key-of = { $n ->
    [one] Odpowiedź do { $n } zadania. To, co zaokrągla się do niej na miarce, też jest dobre.
    [few] Odpowiedzi do { $n } zadań. To, co zaokrągla się do nich na miarce, też jest dobre.
    [many] Odpowiedzi do { $n } zadań. To, co zaokrągla się do nich na miarce, też jest dobre.
   *[other] Odpowiedzi do { $n } zadania. To, co zaokrągla się do nich na miarce, też jest dobre.
 }
practice-paper-initials = Inicjały
practice-paper-date = Data
practice-paper-order = Wpisz w kratki 1, 2, 3 i tak dalej.

## What a class did

class-heading = Przyjmij kody swojej grupy
class-codes = Kody, jeden w wierszu
class-codes-hint = Wklej to, co twoi ludzie ci przysłali lub zeskanowali.
class-take = Przyjmij te kody
class-take-sure = Mimo to przyjmij to, o co było pytanie
class-open = Albo otwórz plik z kodami
class-open-hint = Plik tekstowy, po jednym kodzie w wierszu.
class-no-session = Nie ma jeszcze zestawu. Najpierw rozdaj jeden: wyniki należą do niego.
class-taken = { $n ->
    [one] Przyjęto { $n } kod.
    [few] Przyjęto { $n } kody.
    [many] Przyjęto { $n } kodów.
   *[other] Przyjęto { $n } kodu.
 }
class-refused = { $n ->
    [one] Nie przyjęto { $n } wiersza:
    [few] Nie przyjęto { $n } wierszy:
    [many] Nie przyjęto { $n } wierszy:
   *[other] Nie przyjęto { $n } wiersza:
 }
class-summary = Co zrobiła grupa
class-none = Nie ma jeszcze wyników tego zestawu.
class-by-topic = Tematy
class-by-person = { $n ->
    [one] Według osób: { $n } osoba. Liczy się najnowszy wynik.
    [few] Według osób: { $n } osoby. Liczy się najnowszy wynik.
    [many] Według osób: { $n } osób. Liczy się najnowszy wynik.
   *[other] Według osób: { $n } osoby. Liczy się najnowszy wynik.
 }
class-roads = Częste błędy
class-no-roads = Nikt nie popełnił żadnego z częstych błędów.
class-column-topic = Temat
class-column-asked = Odpowiedzi
class-column-first = Od razu
class-column-second = Druga próba
class-column-right = Dobrze
class-column-share = Ile dobrych
class-column-who = Inicjały
class-column-date = Data
class-column-wrong = Źle
class-column-open = Pominięto
class-column-times = Ile razy
class-column-way = Czego uczyć
class-column-level = Poziom
class-column-until = Ważne do
class-shown = Kto co pokazał
class-shown-hint = Temat liczy się, gdy wszystkie jego zadania były dobrze zrobione, za pierwszym lub drugim razem, w najnowszym zestawie, który o niego pytał. To zwyczaj szkolących, nie zasada ze źródłem. To nie jest uprawnienie: ty decydujesz, kto może pracować bez nadzoru. Osoby odróżniają tylko inicjały.
class-months = Ile miesięcy to jest ważne
class-months-wrong = Dopóki tego nie poprawisz, termin się nie pokaże.
class-until-unknown = Nie wiadomo
class-lost = Przepadło { $day } przez złą odpowiedź
class-ran-out = Straciło ważność. Ostatni dzień to { $day }
class-shown-by = Pokazane przez: { $who }
class-shown-nothing = { $who }: jeszcze żadnego całego tematu.
class-remove-warning = Liczba wyników osoby { $who } w dzienniku: { $n }. Jej inicjały zostaną z nich wymazane na zawsze; to, co pokazano, zostaje i jest niczyje.
class-remove-do = Wymaż i usuń
class-remove-leave = Zostaw wszystko
class-logged = W dzienniku: { $n }. Jeszcze nie w dzienniku: { $new }.
class-log = Wpisz te wyniki do dziennika
class-log-hint = W dzienniku wynik zostaje na zawsze, ze swoim dniem i terminem ważności, i jest w kopiach zapasowych. Inicjały można tam też wymazać.
class-remove = Usuń wszystko osoby { $who } z tego urządzenia i z dziennika
class-keeping = Co zostaje na tym urządzeniu
class-keeping-hint = Wyniki znikają po zamknięciu strony, chyba że je zachowasz. Kody nie należą do dziennika ani do żadnej kopii zapasowej; to, co wpiszesz do dziennika, należy. To, co usuniesz z tego urządzenia, znika z niego. Kopie, które zapisano lub przekazano, zostają tam, gdzie są.
class-keep = Zachowaj wyniki na tym urządzeniu
class-kept = Wyniki są zachowane na tym urządzeniu.
class-not-kept = Wyniki nie są zachowane.
class-save = Zapisz wszystkie kody jako plik
class-erase = Usuń wszystkie wyniki z tego urządzenia
class-remove-codes = Wszystkie wyniki osoby { $who } znikną z tego urządzenia. To, co zrobili inni, zostaje.
class-remove-off = Usuń je
class-erase-warning = { $n ->
    [one] Jeden wynik zniknie z tego urządzenia. To, co wpisano do dziennika, zostaje tam, tak jak zapisane pliki.
    [few] { $n } wyniki znikną z tego urządzenia. To, co wpisano do dziennika, zostaje tam, tak jak zapisane pliki.
    [many] { $n } wyników zniknie z tego urządzenia. To, co wpisano do dziennika, zostaje tam, tak jak zapisane pliki.
   *[other] { $n } wyniku zniknie z tego urządzenia. To, co wpisano do dziennika, zostaje tam, tak jak zapisane pliki.
 }
class-erase-do = Usuń wszystkie
class-erase-leave = Zostaw je tu
class-gone = Nie ma ich już na tym urządzeniu. Możesz je przywrócić, dopóki nie opuścisz tej części.
class-put-back = Przywróć je

## The first fill, step by step

first-fill = Pierwsze napełnienie
first-fill-about = Przewodnik prowadzi cię przez jedno napełnienie na tej stronie. Pokazuje każdy krok tam, gdzie robi się go w pracy.
first-fill-safe = Przewodnik niczego nie wypełnia i niczego nie zapisuje. Liczy się tylko to, co zrobisz własną ręką. Każdy krok możesz pominąć i skończyć, kiedy chcesz.
first-fill-begin = Zacznij pierwsze napełnienie
first-fill-again = Przejdź to jeszcze raz
first-fill-resume = Idź dalej od kroku { $n }
first-fill-runs = Jest w toku. Jesteś przy kroku { $n } z { $of }.
first-fill-link = To dla ciebie nowe? Daj się poprowadzić przez pierwsze napełnienie.
first-fill-link-resume = Wróć do pierwszego napełnienia, krok { $n }
first-fill-at = Pierwsze napełnienie, krok { $n } z { $of }
first-fill-told = { $at }: { $title }. { $standing }
first-fill-is-done = Gotowe
first-fill-not-done = Czeka
first-fill-is-warned = Gotowe, z ostrzeżeniem
first-fill-warned = Gotowe, z ostrzeżeniem: { $warning }
first-fill-stopped = Jeszcze nie gotowe. Dozowanie ostrzega cię: { $warning }
first-fill-escape = Aby tu wrócić, naciśnij pasek na górze albo klawisz Escape.
first-fill-to = Przejdź do „{ $control }”
first-fill-next = Następny krok
first-fill-finish = Zakończ
first-fill-skip = Pomiń ten krok
first-fill-back = Wstecz
first-fill-pause = Odłóż na potem
first-fill-close = Zakończ przewodnik
first-fill-put-away = Zamknij
first-fill-ended = To było twoje pierwsze napełnienie
first-fill-ended-all = Wszystkie kroki za tobą. Niech ktoś, kto zna tę pracę, popatrzy na twoje pierwsze napełnienia w pracy.
first-fill-ended-skipped = Te kroki pominięto. Wróć do nich albo poproś kogoś, aby ci je pokazał.
first-fill-ended-governs = Decydują etykieta, jej karta charakterystyki, zasady twojego obiektu i przeszkoleni ludzie.

first-fill-wear = Załóż to, czego wymaga etykieta
first-fill-wear-do = Zrób to, zanim otworzysz butelkę. Rozprysk może od razu uszkodzić oczy i skórę. Strona podaje, co założyć, w „{ $control }”. Decydują etykieta i karta charakterystyki.
first-fill-wear-list = Do produktu { $product } załóż: { $wear }
first-fill-wear-none = Żaden kod zagrożenia produktu { $product } nie każe nic zakładać. Trzymaj się jego etykiety, karty charakterystyki i zasad twojego obiektu.
first-fill-wear-unknown = Strona nie zna wszystkich zagrożeń produktu { $product }. Przeczytaj jego etykietę i kartę charakterystyki albo zapytaj.
first-fill-wear-on = Mam to na sobie
first-fill-wear-read = Etykieta jest przeczytana
first-fill-wear-again = To, co masz na sobie, było dla innej etykiety. Dla tej zajrzyj jeszcze raz do kroku 1.
first-fill-wear-again-go = Pokaż krok 1
first-fill-wear-lacks = Nie ma jeszcze produktu. Wybierz go w kroku 3, potem wróć.
first-fill-wear-open = Zaznacz pole, gdy wszystko gotowe.
first-fill-wear-done = Wszystko gotowe na produkt { $product }.

first-fill-machine = Wybierz swoją maszynę
first-fill-machine-do = Spójrz na maszynę obok siebie. Wybierz ją w „{ $control }”. Strona musi znać jej zbiornik, aby wiedzieć, ile wody wchodzi.
first-fill-machine-lacks = Strona nie wie, ile mieści zbiornik. Spójrz na tabliczkę lub do instrukcji maszyny albo zapytaj.
first-fill-machine-done = Na stronie jest { $machine }, ze zbiornikiem { $tank }. Czy to twoja? Jeśli nie, wybierz inną.

first-fill-product = Wybierz produkt i przeczytaj etykietę
first-fill-product-do = Weź butelkę do ręki. W „Produkt” wybierz tę samą nazwę. Potem porównaj „Rozcieńczenie na etykiecie” z etykietą. Oba muszą mówić to samo.
first-fill-product-locked = O produkcie decydują tu podłoga i jej standard. Weź tę butelkę do ręki. Sprawdź, czy jej nazwa jest taka jak na tej stronie. Jeśli nie, zapytaj, zanim nalejesz.
first-fill-product-lacks = Strona nie umie jeszcze odczytać tej etykiety. Przejdź do „Rozcieńczenie na etykiecie” i zobacz, co tam stoi.
first-fill-product-done = Na stronie jest produkt { $product }, a na etykiecie „{ $label }”. Czy to samo mówi twoja butelka?

first-fill-floor = Wybierz podłogę i zobacz jej zasadę
first-fill-floor-do = Wybierz podłogę, którą będziesz czyścić. Niektóre produkty niszczą niektóre podłogi na zawsze. Gdzie twój obiekt ma dla niej standard, liczy się ta zasada.
first-fill-floor-locked = Wybierz podłogę, którą będziesz czyścić. Twój obiekt ma dla niej standard. Strona napełnia według tej zasady i żadnej innej.
first-fill-floor-lacks = Nie ma jeszcze podłogi. Zapytaj, jaka to podłoga i co wolno na nią dać.
first-fill-floor-done = Na stronie jest { $floor }.
first-fill-floor-standard = Jej standard to { $standard }.
first-fill-floor-no-standard = Dla tego produktu nie obowiązuje na niej żaden standard. Decyduje etykieta.

first-fill-level = Jak pełno i czym odmierzasz
first-fill-level-do = Zrób tylko tyle, ile potrzebujesz. Ustaw poziom w „Napełnij zbiornik do”. Potem w „Miarka na ścianie” wybierz dzbanek lub pompkę, która wisi przy twoim kranie.
first-fill-level-lacks = Strona nie umie jeszcze odczytać poziomu lub miarki. Pod polem pisze dlaczego.
first-fill-level-done = Napełniasz do { $level }. Twoja miarka to: { $measure }. Zgadza się?

first-fill-amount = Odczytaj ilość
first-fill-amount-do = Tyle produktu wchodzi do tego napełnienia. Przeczytaj na głos, razem z jednostką. Nigdy nie zgaduj i nigdy nie dodawaj nic na wszelki wypadek.
first-fill-amount-is = Twoja ilość to { $amount }.
first-fill-amount-lacks = Nie ma jeszcze ilości. W jej miejscu strona mówi, czego brakuje.
first-fill-amount-stopped = W miejscu ilości stoi ostrzeżenie. Przeczytaj je i zrób, co mówi.
first-fill-amount-open = Teraz powiedz, dlaczego najpierw wlewa się wodę.
first-fill-amount-done = Masz ilość i wiesz, dlaczego najpierw wlewa się wodę.
first-fill-why = Gdy nalewasz ręcznie, dlaczego najpierw wlewa się wodę?
first-fill-why-cheaper = Produkt kosztuje wtedy mniej.
first-fill-why-splash = Mniej się pieni i mniej pryska.
first-fill-why-same = To bez różnicy.
first-fill-why-right = Dobrze. Woda, która spada na produkt, pieni się i może prysnąć ci w twarz. Kwas też wlewa się do wody, nigdy wody do kwasu.
first-fill-why-wrong = Niezupełnie. Pomyśl o wodzie, która mocno spada na mocny produkt. Wybierz jeszcze raz.

first-fill-record = Zapisz napełnienie
first-fill-record-do = W pracy naciskasz „{ $control }”, gdy zbiornik jest napełniony. Dzięki temu następna zmiana wie, co w nim jest.
first-fill-record-training = To tylko szkolenie? Wtedy pomiń ten krok. Zapis trafia do prawdziwego dziennika i w nim zostaje. Możesz go potem oznaczyć jako pomyłkę, ale nadal go widać.
first-fill-record-lacks = Nie ma jeszcze ilości do zapisania.
first-fill-record-stopped = Na przeszkodzie stoi ostrzeżenie, więc nic nie da się tu zapisać.
first-fill-record-open = Odkąd działa przewodnik, nie wpisano do dziennika żadnego napełnienia.
first-fill-record-done = Twoje napełnienie jest w dzienniku.

first-fill-shift = Na koniec zmiany
first-fill-shift-do = Brudna woda w zbiorniku śmierdzi i rosną w niej zarazki. Rób te pięć rzeczy za każdym razem, w tej kolejności. Potem odhacz je w „{ $control }” w Dzienniku.
first-fill-shift-drain = Opróżnij oba zbiorniki tam, gdzie wolno wylać brudną wodę.
first-fill-shift-rinse = Wypłucz je czystą wodą.
first-fill-shift-filters = Wyczyść filtry, aby odsysanie miało powietrze.
first-fill-shift-brush = Wyczyść worek na śmieci lub szczotkę.
first-fill-shift-squeegee = Wytrzyj ssawę, aby nie zostawiała smug.
first-fill-shift-lacks = W dzienniku nie ma dziś napełnienia tej maszyny, więc nie ma czego odhaczyć. Przeczytaj te pięć rzeczy.
first-fill-shift-open = Jeszcze do zrobienia: { $tasks }.
first-fill-shift-done = Wszystkie pięć odhaczono.
