# Polish, in Fluent syntax: of what is said where Fill is not open, the jobs at the tank and what the cautions say to do.
# No native reader has checked this file yet.

moment = { $day }, { $clock }

cautions-heading = Co może zrobić ludziom, podłogom i maszynie?
caution-first-aid = Pierwsza pomoc
caution-first-aid-always = W nagłym wypadku dzwoń na miejscowy numer alarmowy. Miej w ręku etykietę lub kartę charakterystyki.
caution-handle = Jak się z nim obchodzić
caution-call = W sprawie pierwszej pomocy dzwoń: { $number }
site-emergency = Do kogo dzwonić w sprawie pierwszej pomocy
site-emergency-hint = Numer alarmowy obiektu albo ośrodek informacji o zatruciach w kraju.
caution-spill = Rozlanie
caution-spill-always = Nie dopuszczaj ludzi. Zbierz, spłucz podłogę i poczekaj, aż wyschnie. Znak mokrej podłogi stoi, dopóki podłoga nie wyschnie.
caution-store = Przechowywanie
caution-store-always = Zamknięty, pionowo, we własnym pojemniku z etykietą, z dala od żywności i poza zasięgiem dzieci.
caution-dispose = Usuwanie
caution-dispose-always = Opróżniaj zbiornik brudnej wody tylko tam, gdzie pozwalają miejscowe przepisy. Nigdy nie wylewaj koncentratu do kanalizacji.
caution-notes = Zapisane z karty charakterystyki
caution-precautions = Środki ostrożności na etykiecie
cautions-foam = Piana: próba wstrząsania i zbiornik, który się pieni
cautions-residue = Co zostaje na podłodze
cautions-mixing = Co nigdy nie może się spotkać, ze wszystkiego w tym obiekcie
cautions-floors = Który produkt nadaje się na którą podłogę
cautions-container = Etykieta na butelkę lub wiadro, które napełniasz
foam-tank = Zbiornik, który się pieni
foam-tank-stop = Zatrzymaj od razu maszynę i odsysanie.
foam-tank-drain = Opróżnij oba zbiorniki tam, gdzie obiekt odprowadza ścieki.
foam-tank-rinse = Płucz zbiorniki i filtry, aż woda popłynie bez piany.
foam-tank-refill = Napełnij ponownie, dając mniej produktu, albo produktem zrobionym do szorowarek. Mydło zostawione na podłodze też się pieni: najpierw zbierz je mopem.
fits-heading = Czy się nadaje?
fits-machine-not = Nie wlewaj go do tej maszyny.
fits-hint = Według rodzin i pH roztworu roboczego, przy rozcieńczeniu z etykiety lub ze standardu obiektu. To, czego nie wiadomo, liczy się jak szkoda. Rozstrzyga karta pielęgnacji producenta podłogi.
floor-verdict-fits = Nadaje się na tę podłogę według wszystkich zasad z tej listy. Trzymaj się karty pielęgnacji producenta podłogi i etykiety produktu.
floor-verdict-fits-short = Nadaje się
floor-verdict-does-not-fit-short = Nie nadaje się
floor-verdict-unknown-short = Nie wiadomo: jeszcze nie używaj
column-fits = Ocena
column-why = Dlaczego
meet-table = Produkty, każdy z każdym
meet-hint = „Nic na liście” nie pozwala mieszać: mimo to płucz. Liczy się ślad: to, co zostało w zbiorniku, wiadrze lub odpływie. Gdzie rodzina nie jest znana, oba trzyma się osobno.
meet-gas = Nigdy: gaz
meet-harms = Nigdy
meet-spoils = Nie: jeden psuje drugi
meet-unknown = Nie wiadomo: trzymaj osobno
meet-none = Nic na liście

handle-read-first = Przeczytaj etykietę i kartę charakterystyki, zanim otworzysz.
handle-no-mist = Nie wdychaj mgły, aerozolu ani oparów. Lej powoli i nisko.
handle-off-skin = Chroń skórę, oczy i ubranie.
handle-wash = Umyj ręce, gdy skończysz.
handle-no-eating = Nie jedz, nie pij i nie pal, gdy z nim pracujesz.
handle-no-flame = Trzymaj z dala od ciepła, iskier i ognia.
handle-work-clothes = Brudne ubranie robocze zostaw w pracy.
handle-instructions = Najpierw poproś przełożonego o szczególne wskazówki.
handle-not-to-drain = Nie wpuszczaj do kanałów deszczowych, gleby ani wód. Zanim wylejesz do jakiegokolwiek odpływu, sprawdź miejscowe przepisy.

first-aid-eye-urgent = Oczy: płucz od razu czystą wodą przez co najmniej 15 minut. Trzymaj powieki otwarte. Wyjmij soczewki, jeśli to łatwe. Potem płucz dalej. Niech ktoś zaraz zadzwoni do ośrodka zatruć lub lekarza.
first-aid-eye = Oczy: płucz czystą wodą przez kilka minut. Wyjmij soczewki, jeśli to łatwe. Potem płucz dalej. Idź do lekarza, jeśli nadal boli.
first-aid-skin-urgent = Skóra: zdejmij od razu mokre ubranie i buty. Płucz dużą ilością wody przez co najmniej 15 minut. Zadzwoń zaraz do ośrodka zatruć lub lekarza. Wypierz ubranie, zanim znów je założysz.
first-aid-skin = Skóra: umyj dużą ilością wody. Idź do lekarza, jeśli zostanie wysypka lub ból. Wypierz ubranie, zanim znów je założysz.
first-aid-breathe-urgent = Wdychanie: wyjdź na świeże powietrze i odpocznij w pozycji, w której łatwo oddychać. Zadzwoń zaraz do ośrodka zatruć lub lekarza. Nie wracaj tam.
first-aid-breathe = Wdychanie: wyjdź na świeże powietrze i odpocznij. Zadzwoń do ośrodka zatruć lub lekarza, jeśli źle się czujesz.
first-aid-swallow-urgent = Połknięcie: wypłucz usta. Nie wywołuj wymiotów. Zadzwoń zaraz do ośrodka zatruć lub lekarza.
first-aid-swallow = Połknięcie: wypłucz usta. Zadzwoń do ośrodka zatruć lub lekarza, jeśli źle się czujesz.
first-aid-exposed-urgent = Złe samopoczucie lub brak pewności: zadzwoń zaraz do ośrodka zatruć lub lekarza. Miej przy sobie etykietę lub kartę charakterystyki.
first-aid-exposed = Złe samopoczucie lub brak pewności: idź do lekarza. Weź etykietę lub kartę charakterystyki.

spill-keep-away = Nie dopuszczaj ludzi. Zanim zaczniesz sprzątać, załóż to, co tu wymieniono.
spill-no-flame = Zgaś ogień i nie dopuść do iskier.
spill-absorb = Nie daj się temu rozlać i zbierz sorbentem. Na wybielacz lub inny utleniacz nie używaj trocin ani szmat.
spill-collect = Zbierz wszystko. Nie wpuszczaj do odpływów, gleby ani wód.

store-locked = Przechowuj pod zamknięciem.
store-closed-aired = Trzymaj zamknięty, w miejscu ze świeżym powietrzem.
store-cool = Trzymaj w chłodzie, z dala od ciepła i iskier.
store-no-sun = Trzymaj z dala od słońca, w miejscu ze świeżym powietrzem.
store-away-from-fuel = Trzymaj z dala od ubrań, papieru, drewna i wszystkiego, co się pali.
store-original = Trzymaj we własnym pojemniku.
store-resistant = Nie przechowuj w gołym metalu.

dispose-by-rules = Usuwaj produkt i pojemnik tak, jak mówią etykieta, karta charakterystyki i miejscowe przepisy. Gdzie tego wymagają, zleć to firmie z uprawnieniami.

pair-bleach-acid-do = Nigdy ich nie mieszaj ani nie używaj jednego po drugim bez płukania. Jeśli się spotkały, od razu wyjdź na świeże powietrze i wezwij pomoc.
pair-bleach-ammonia-do = Nigdy ich nie mieszaj ani nie używaj jednego po drugim bez płukania. Jeśli się spotkały, od razu wyjdź na świeże powietrze i wezwij pomoc.
pair-bleach-alcohol-do = Nigdy ich nie mieszaj. Jeśli się spotkały, wyjdź na świeże powietrze i wezwij pomoc.
pair-bleach-peroxide-do = Nigdy ich nie mieszaj. Jeśli się spotkały, nie zamykaj pojemnika. Wyjdź na świeże powietrze.
pair-peroxide-acid-do = Nigdy nie mieszaj ich w jednym pojemniku. Między nimi dobrze wypłucz.
pair-acid-alkali-do = Nigdy ich nie mieszaj. Nie sprzątaj jednego drugim. Między nimi dobrze wypłucz.
pair-oxidiser-solvent-do = Nigdy ich nie mieszaj. Przechowuj osobno. Między nimi dobrze wypłucz.
pair-quat-soap-do = Spłucz całe mydło, zanim użyjesz czwartorzędowej soli amoniowej. Między nimi opróżnij i wypłucz zbiornik.

measure-more = Więcej o miarce i zakresie
station-left = Teraz w zbiorniku
station-left-now = Teraz w zbiorniku
station-level = Napełnij do
station-rest = Jak mocny jest roztwór?
station-rest-as-filled = Jak mówi etykieta: napełniono dobrze
station-rest-as-read = Jak odczytano
station-rest-unknown = Nikt nie wie
station-mishap = Co poszło nie tak?
station-mishap-amount = Za dużo lub za mało, i wiem ile
station-mishap-reading = Odczyt jest zły
station-mishap-forgotten = Nie pamiętam, czy już wlano
station-mishap-wrong-product = Wlano zły produkt
station-put-in = Koncentrat, który wlano
station-other = Produkt, który wlano
station-other-none = Wybierz go
station-other-hint = Wyżej jest produkt, który był w zbiorniku lub powinien w nim być.
station-add = Dodaj tyle koncentratu
station-add-water = Dodaj tyle wody
station-drain-first = Najpierw spuść tyle
station-read = Koncentrat w zbiorniku, jak odczytano
figure-station-drain = Najpierw spuścić
figure-station-water = Woda do dodania
figure-station-concentrate = Koncentrat do dodania, dokładnie
figure-station-rounded = Koncentrat do dodania, na miarce
figure-station-count = Kreski, naciśnięcia lub nakrętki
figure-station-level = Potem w zbiorniku
figure-station-strength = Stężenie
figure-station-strength-low = Może być tak słaby jak
figure-station-active = Substancja czynna w zbiorniku
figure-station-strength-high = Może być tak mocny jak
figure-station-ratio = Części wody na 1
act-keep-away = Odsuń się. Otwórz drzwi i okna. Nie spuszczaj i nie dolewaj wody, dopóki karta charakterystyki obu produktów lub osoba z kwalifikacjami nie powie, jak.
act-read = Zmierz stężenie, potem wybierz „Odczyt jest zły”.
act-drain = Spuść { $amount } tam, gdzie pozwalają miejscowe przepisy.
act-drain-all = Spuść wszystko tam, gdzie pozwalają miejscowe przepisy.
act-rinse = Wypłucz zbiornik czystą wodą i spuść też tę wodę.
act-water = Dodaj { $amount } wody.
act-concentrate = Dodaj { $amount } koncentratu, powoli i nisko nad wodą.
act-nothing = Zostaw tak, jak jest.
act-other-machine = Użyj maszyny, dla której jest standard: { $machines }. Tę opróżnij i wypłucz, jak po zmianie.
act-no-machine = Zapytaj przełożonego, której maszyny użyć. Tę opróżnij i wypłucz, jak po zmianie.
reading-method = Zmierz czym
reading-method-strip = Pasek testowy
reading-method-drops = Test kroplowy
reading-method-refractometer = Refraktometr
reading-method-conductivity = Konduktometr
reading-method-catch = Próba wypływu
reading-strip = Pasek pokazuje
reading-strip-hint = Ppm pola, które pasuje, albo wartość między dwoma polami.
reading-blocks = Pola na skali paska, ppm
reading-blocks-hint = Jak wydrukowano, ze spacją między nimi: 0 50 100 200 400
reading-drops = Krople do zmiany koloru
reading-per-drop = Jedna kropla oznacza
reading-brix = Refraktometr pokazuje, °Brix
reading-brix-hint = Najpierw wyzeruj go na wodzie z kranu.
reading-per-brix = 1 °Brix oznacza
reading-per-brix-hint = Od producenta produktu: procent koncentratu na 1 °Brix.
reading-conductivity = Miernik pokazuje
reading-conductivity-water = W wodzie z kranu pokazuje
reading-conductivity-known = W znanym roztworze pokazuje
reading-known-strength = Stężenie tego roztworu
reading-drawn = Pobrany koncentrat
reading-caught = Koncentrat i woda razem
reading-note-strip = Pasek jest dokładny do około jednego pola w obie strony. Małej pomyłki nie wykryje.
reading-note-drops = Test kroplowy jest dokładny do jednej kropli w obie strony.
reading-note-refractometer = Ręczny refraktometr jest dokładny do 0,2 °Brix w obie strony. Brud w zużytym roztworze czyta się jak koncentrat.
reading-note-conductivity = Przyjęto, że miernik jest dokładny do 1 %, a znany roztwór do 5 %. Potrzebna jest ta sama woda i to samo ciepło.
reading-note-catch = Przyjęto, że każdy dzbanek jest dokładny do 5 %.
remark-reading-inside-title = To mieści się w zakresie
remark-reading-inside = Odczyt to { $read }. Zakres to { $window }.
remark-reading-weak-title = To za słabe
remark-reading-weak = Odczyt to { $read }. Zakres to { $window }. Wybierz „Napraw”.
remark-reading-strong-title = To za mocne
remark-reading-strong = Odczyt to { $read }. Zakres to { $window }. Wybierz „Napraw”.
remark-reading-undecided-title = Ten odczyt nie może rozstrzygnąć
remark-reading-undecided = Może to być { $read }, a zakres to { $window }. Zmierz dokładniej albo opróżnij i napełnij od nowa tam, gdzie to ważne.
remark-drain-strong-title = Najpierw spuść
remark-drain-strong = To, co zostało, jest za mocne lub jest tego za dużo na ten poziom.
remark-drain-weak-title = Najpierw spuść
remark-drain-weak = To, co zostało, jest tak słabe, że zajmuje miejsce koncentratu.
remark-drain-first-title = Najpierw spuść
remark-drain-first = To, co trzeba dodać, nie zmieściłoby się.
remark-rest-as-filled = Przyjęto, że to, co zostało, jest tak mocne jak dobre napełnienie.
remark-rest-unknown-title = Stężenie nieznane: zacznij od nowa
remark-rest-unknown = To, co zostało, może być wszystkim od wody do podwójnej ilości z etykiety. Po dolaniu zbiornik mógłby mieć { $strength }. Opróżnienie jest bezpiecznym wyborem.
remark-right-already = Teraz jest { $strength }, w granicach 5 % tego, co ma być.
remark-forgotten-title = Nie dodawaj po prostu kolejnej dawki
remark-forgotten = Jest w nim zero dawek albo jedna: { $now }. Z jeszcze jedną byłoby { $twice }.
remark-wrong-product-title = Dwa produkty w jednym zbiorniku
remark-wrong-product = Do { $product } wlano { $other }. Mieszanina nie ma etykiety: nie trzyma się jej i nie rozcieńcza.
remark-meeting-title = Nigdy nie mogą się spotkać
remark-meeting = { $happens } { $act }
remark-meeting-unknown-title = Nie wiadomo, czy mogą się spotkać
remark-meeting-unknown = Nie wpisano, jakiego rodzaju jest jeden z produktów. Zajrzyj do sekcji 10 obu kart charakterystyki.
mistake-tank-empty = W zbiorniku nie ma nic do naprawienia. Wybierz Napełnij.
mistake-no-other = Wybierz produkt, który wlano.
mistake-blocks = Wpisz ppm co najmniej dwóch pól, rosnąco, ze spacją między nimi.
mistake-no-such-block = Pasek pokazuje więcej niż jego ostatnie pole. Użyj paska o wyższym zakresie albo najpierw rozcieńcz próbkę.
mistake-no-span = Znany roztwór pokazuje niewiele więcej niż woda. Użyj mocniejszego.
mistake-beyond-calibration = To za daleko od znanego roztworu. Zrób bliższy.
mistake-more-than-whole = Więcej koncentratu niż całości. Zamień te dwie.

drawing-tank-level = { $n ->
    [one] Zbiornik w czasie zmiany: { $n } napełnienie, najwyżej { $tank }, razem { $time }.
    [few] Zbiornik w czasie zmiany: { $n } napełnienia, każde najwyżej { $tank }, razem { $time }.
    [many] Zbiornik w czasie zmiany: { $n } napełnień, każde najwyżej { $tank }, razem { $time }.
   *[other] Zbiornik w czasie zmiany: { $n } napełnienia, każde najwyżej { $tank }, razem { $time }.
}
flow-heading = Która nastawa wypływu?
flow-amount = Użyj tej nastawy
flow-setting = Nastawa { $n }
flow-sentence = Podłoga { $floor }: użyj nastawy { $setting }. Daje ona { $rate }. Pełny zbiornik starcza na { $time } i na { $area } podłogi.
flow-table = Wszystkie nastawy tej maszyny na tej podłodze
figure-flow-rate = Ilość dawana na podłogę
figure-flow-tank-time = Pełny zbiornik starcza na
figure-flow-tank-area = Pełny zbiornik czyści
figure-flow-flow = Wypływ tej nastawy
figure-flow-passing = Podłoga przejeżdżana w ruchu
figure-flow-speed = Prędkość, przy której by pasowało
figure-flow-passes = Przejazdy, które by pasowały
figure-flow-passes-setting = Nastawa do tych przejazdów
figure-flow-thickness = Grubość danej warstwy
figure-flow-film = Co zostaje na podłodze
figure-flow-film-thickness = Grubość tego, co zostaje
figure-flow-dry-from = Sucho po, najwcześniej
figure-flow-dry-to = Sucho po, najpóźniej
figure-flow-full = Wypływ przy pełnym zbiorniku
figure-flow-half = Wypływ w połowie zbiornika
figure-flow-last = Wypływ na końcu
flow-room = Schnięcie i powietrze w pomieszczeniu
air-temperature = Temperatura powietrza
air-humidity = Wilgotność powietrza
air-speed = Jak szybko porusza się powietrze
air-speed-hint = Wzdłuż podłogi. W spokojnym pomieszczeniu około 30 ft/min, 0,15 m/s; przy wentylatorze dziesięć razy więcej. Powszechna praktyka, bez źródła.
machine-pick-up = Roztwór, który maszyna zbiera z powrotem
machine-pick-up-hint = Zważ go lub złap dla swojej maszyny. 90 % to powszechna praktyka, bez źródła.
machine-head-full = Woda nad zaworem, pełny zbiornik
machine-head-full-hint = Tylko gdy roztwór spływa sam, grawitacją. Puste, gdy tłoczy go pompa.
machine-head-low = Woda nad zaworem, pusty zbiornik
floor-class = Znajdź jej klasę: powierzchnia, nasiąkliwość, próba kropli
floor-absorption = Nasiąkliwość płytki lub kamienia
floor-absorption-hint = Procent masy, z karty technicznej (badanie ISO 10545-3 lub ASTM C373). Puste, jeśli nie wiesz.
absorption-iso = ISO 13006: { $class }. { $source }.
absorption-ansi = ASTM C373, ANSI A137.1: { $class }. { $source }.
floor-texture = Faktura
texture-unknown = Jeszcze nie wiadomo
texture-smooth = Gładka lub polerowana
texture-textured = Z fakturą lub szorstka
floor-joints = Fugi lub spoiny
floor-joints-hint = Faktura lub otwarte fugi wskazują o klasę wyżej, ale nie dalej niż do średniej.
joints-unknown = Jeszcze nie wiadomo
joints-none = Brak
joints-sealed = Impregnowane lub epoksydowe
joints-open = Otwarte cementowe
floor-drop = Kropla wody znika po
floor-drop-hint = Upuść ją na czystą, suchą podłogę, poza fugami. Puste, jeśli nie było próby.
class-sealed = zamknięta
class-low = mała
class-medium = średnia
class-high = duża
class-reason-surface = Powierzchnia ({ $surface }): { $class }.
class-reason-seal = { $surface }: { $class }. Nie liczy się to, co leży pod impregnatem lub powłoką.
class-reason-glaze = Szkliwo zamyka płytkę, więc jej nasiąkliwość się nie liczy: { $class }.
class-reason-absorption = Nasiąkliwość: { $class }. Dotyczy twojej płytki, więc liczy się przed powierzchnią.
class-reason-drop = Próba kropli: { $class }. Dotyczy właśnie tej podłogi, więc liczy się przed resztą.
class-reason-worn = Próba kropli: { $class }. Impregnat trzyma kroplę dłużej, więc tu może być starty lub może go nie być.
class-reason-texture = Jej faktura zatrzymuje roztwór w zagłębieniach, o klasę wyżej: { $class }.
class-reason-joints = Otwarte fugi piją roztwór, o klasę wyżej: { $class }.
class-reason-both = Faktura i otwarte fugi, razem o klasę wyżej: { $class }.
floor-class-says = Razem wskazuje to na klasę: { $class }. To wskazówka: powszechna praktyka, bez źródła.
floor-class-agrees = Razem wskazuje to na klasę wybraną wyżej: { $class }. To wskazówka: powszechna praktyka, bez źródła.
floor-class-take = Przyjmij tę klasę i jej zwykłą wartość
calibrate = Znajdź wypływ każdej nastawy próbami wypływu
calibrate-hint = Przez minutę zbieraj wypływ jednej nastawy do dzbanka i wpisz, ile wypłynęło. Powtórz to; strona wykreśli prostą i znajdzie wypływ każdej nastawy.
catch-setting = Nastawa
catch-time = Zbierano przez
catch-volume = Wypłynęło
catch-row = Próba wypływu { $n }: { $field }
catch-add = Dodaj próbę wypływu
catch-remove = Usuń próbę wypływu { $n }
calibrate-take = Użyj tych wypływów dla nastaw
calibrate-line = Pasuje prosta: o { $flow } więcej na każdą nastawę.
calibrate-table = Żadna prosta nie pasuje w granicach 10 %. Każda nastawa zachowuje średnią własnych prób wypływu.
calibrate-falls = Te próby wypływu sobie przeczą: wyższa nastawa dała nie więcej niż niższa. Zrób próby jeszcze raz, zanim użyjesz którejś z nich.
calibrate-outlier = Próba wypływu { $n } leży daleko od pozostałych. Zostaje w obliczeniu; wypróbuj tę nastawę jeszcze raz.
calibrate-few = Aby wykreślić prostą, zrób próby co najmniej dwóch nastaw.
calibrate-settings = Co mówią próby wypływu
calibrate-drawing = Próby wypływu i co mówią o każdej nastawie
column-flow = Wypływ
column-error = Plus minus
column-tests = Próby
column-setting = Nastawa
column-rate = Na podłodze
column-tank-time = Starcza na
column-tank-area = Czyści
column-fit = Ile mokrego
fit-short = Za mało
fit-meets = Dobrze
fit-too-wet = Za mokro
drawing-rates = Słupki pokazują, ile daje każda nastawa. Wybrana jest nastawa { $n }. Podłoga ma dostać { $low } do { $high }.
drawing-rates-none = Słupki pokazują, ile daje każda nastawa. Żadna nie pasuje. Podłoga ma dostać { $low } do { $high }.
drawing-rates-band = Pas: ile ma dostać ta podłoga
shift-heading = Czego trzeba na zmianę?
shift-more = Jak jeździ maszyna i jej nastawy
shift-refill = Jedno opróżnienie, płukanie i napełnienie zajmuje
shift-refill-hint = Puste, jeśli nic nie zajmuje.
areas-heading = Obszary, w kolejności pracy
areas-before = Obszary wcześniej
areas-after = Więcej obszarów
areas-page = Obszary { $from } do { $to } z { $n }
rows-all = Pokaż wszystkie wiersze ({ $n })
rows-cut = Pierwsze { $shown } z { $n } wierszy.
area-included = Czyść w tej zmianie: { $area }
area-name = Nazwa obszaru
area-size = Wielkość
area-product = Produkt na ten obszar
area-product-asked = Produkt podany wyżej
area-product-none = Jego produktu nie ma w tym obiekcie
area-more = Więcej o tym obszarze
area-machine = Maszyna na ten obszar
area-machine-asked = Maszyna podana wyżej
area-machine-none = Jego maszyny nie ma w tym obiekcie
area-frequency = Jak często się go czyści
area-frequency-hint = Do miesiąca i roku. Puste, gdzie się tego nie liczy.
area-soil = Brud
soil-usual = Jak po zwykłym dniu
soil-heavy = Duży: dwa przejazdy
area-loose = Leżą tam luźne śmieci
area-lane = Szerokość jego przejść albo otwartej podłogi
area-lane-hint = Zmierz najwęższe miejsce, przez które maszyna musi przejechać.
area-around = To, czego maszyna potrzebuje wokół siebie
around-unknown = Nikt nie sprawdził
around-there = Jest
around-lacking = Nie ma tego
area-way = Droga od miejsca napełniania
area-way-hint = W jedną stronę. Puste, jeśli jest tuż obok.
efficiency = Zmierz własną część czasu przy pracy
efficiency-hint = Zmierz czas jednego obszaru tą maszyną, od pierwszego ruszenia do ostatniego zatrzymania.
efficiency-area = Wyczyszczono
efficiency-time = Zajęło to
efficiency-says = To { $share } czasu przy pracy.
efficiency-take = Przyjmij to
mistake-efficiency = To szybciej, niż jeździ ta maszyna, albo wolniej niż dwudziesta część tego. Sprawdź obszar, czas, szerokość i prędkość.
mistake-no-machine = Maszyny tego obszaru nie ma w tym obiekcie. Wybierz inną.
mistake-machine-unsound = Brakuje liczby przy maszynie tego obszaru albo jest zła. Wybierz tę maszynę wyżej i popraw.
mistake-product-unsound = Tego produktu nie da się obliczyć z tą maszyną. Wybierz oba w Dozowaniu, a zobaczysz, dlaczego.
machine-round = Zbiornik brudnej wody, akumulator, praca bez ludzi
machine-recovery = Zbiornik brudnej wody
machine-recovery-hint = Puste, jeśli nie chcesz go sprawdzać. Jedna dziesiąta zostaje wolna na pianę.
machine-battery = Pracuje na jednym ładowaniu
machine-battery-hint = Puste, jeśli ma kabel.
machine-charge = Jedno ładowanie trwa
machine-charge-hint = Przez noc, co najmniej 8 godzin, to powszechna praktyka, bez źródła.
machine-sweeps = Sama zamiata luźne śmieci
machine-unattended = Pracuje bez nikogo obok
machine-lane-least = Najwęższe przejście do pracy bez ludzi
machine-lane-most = Najszersze przejście do pracy bez ludzi
machine-lane-most-hint = Z jej instrukcji. Puste, jeśli go nie podaje.
machine-needs = Czego do tego potrzebuje wokół siebie
machine-needs-hint = Z jej instrukcji: ściany lub regały nie dalej niż tyle a tyle, zamknięte drzwi, brak kabli na podłodze. Puste, jeśli nie potrzebuje niczego.
shift-dry-mop = Ręczne mopowanie na sucho
shift-dry-mop-hint = 10 000 ft² na godzinę to powszechna praktyka, bez źródła. Wpisz to, co zmierzono u was.
shift-prices = Ceny i zapas
site-currency = Twoja waluta
site-currency-hint = Tak jak stoi przed kwotą: $, €, zł.
product-container = Opakowanie produktu podanego wyżej
product-price = Jedno kosztuje
product-lead = Od zamówienia do dostawy
cost-wage = Praca kosztuje
cost-water = Woda kosztuje, razem ze ściekami
stock-spread = Zużycie dnia różni się o
stock-spread-hint = Jedno odchylenie standardowe. 30 % to powszechna praktyka, bez źródła.
area-place = Jego miejsce w zmianie
place-free = Gdzie pasuje
place-first = Pierwszy
place-last = Ostatni
area-opens = Nie wcześniej niż
area-opens-hint = Godziny od początku zmiany. Puste, jeśli czas jest dowolny.
area-closes = Gotowy do
shift-change = Jedno opróżnienie, płukanie i napełnienie innym produktem
areas-order = Przyjmij lepszą kolejność
shift-measure-none = Ta miarka nie liczy się w kreskach: ilość jest w kolumnie „Przed zaokrągleniem”. Dozowanie mówi, jak ją odmierzyć.
areas-list = Lista obszarów jako plik
areas-save = Zapisz listę do arkusza (CSV)
areas-open = Otwórz listę obszarów (CSV)
areas-open-hint = Z każdego arkusza: zapisz go jako CSV. Zanim coś się zmieni, zobaczysz, jak go odczytano.
areas-take = { $n ->
    [one] Przyjmij { $n } obszar
    [few] Przyjmij { $n } obszary
    [many] Przyjmij { $n } obszarów
   *[other] Przyjmij { $n } obszaru
}
areas-leave = Odrzuć plik
areas-headed = Nazwy kolumn są w wierszu { $line }
areas-marks = „{ $typed }” w tym pliku znaczy
areas-marks-unknown = Jeszcze nie wiem
areas-marks-hint = Jedna odpowiedź dla wszystkich jego liczb. Bez niej te, które można odczytać na dwa sposoby, czekają w polach na poprawienie.
areas-how = Obszary, które są tu teraz ({ $n })
areas-how-replace = Plik je zastępuje
areas-how-behind = Zostają, plik idzie po nich
csv-heading = Która kolumna pliku „{ $file }” jest czym?
csv-columns = Więcej kolumn
csv-columns-found = Więcej kolumn (znaleziono { $n })
csv-none = Nie ma w pliku
csv-untitled = Kolumna { $n }
csv-twin = { $title } (kolumna { $n })
csv-first = Pierwsza wartość: { $value }
csv-words = Słowa: { $words }
csv-no-unit = Plik nie podaje jednostki, którą tu znamy. Sprawdź tę.
csv-will = { $n ->
    [one] Z pliku „{ $file }” odczyta się { $n } obszar.
    [few] Z pliku „{ $file }” odczyta się { $n } obszary.
    [many] Z pliku „{ $file }” odczyta się { $n } obszarów.
   *[other] Z pliku „{ $file }” odczyta się { $n } obszaru.
}
csv-read = { $n ->
    [one] Odczytano { $n } obszar. Można to cofnąć.
    [few] Odczytano { $n } obszary. Można to cofnąć.
    [many] Odczytano { $n } obszarów. Można to cofnąć.
   *[other] Odczytano { $n } obszaru. Można to cofnąć.
}
csv-to-mend = { $n ->
    [one] { $n } rzecz do poprawienia:
    [few] { $n } rzeczy do poprawienia:
    [many] { $n } rzeczy do poprawienia:
   *[other] { $n } rzeczy do poprawienia:
}
csv-left = Plik odrzucono. Nic nie zmieniono.
csv-more = … i jeszcze { $n }.
csv-flaw = Wiersz { $line }. { $what }
csv-choose = Wybierz kolumnę nazw albo kolumnę wielkości. Bez jednej z nich nic nie da się odczytać.
csv-no-size = Nie wybrano kolumny wielkości. Każdy obszar zapyta o swoją.
csv-no-floor = Nie wybrano kolumny podłogi. Każdy obszar zapyta o swoją.
csv-full = Z obszarami, które są tutaj, to { $n }. Strona mieści najwyżej 5 000. Niech plik je zastąpi albo podziel go.
csv-unknown = { $field }: w tym obiekcie nie ma „{ $typed }”. Obszar zapyta o coś, co w nim jest.
csv-missing = { $field }: nic tu nie ma. Obszar o to zapyta.
csv-choice = { $field }: „{ $typed }” to nie jest jedno z tych słów: { $words }. Liczy się jako „{ $taken }”.
csv-long = { $field }: zachowano tylko pierwsze 500 znaków.
csv-lines = { $field }: to ciągnie się przez kilka wierszy. Sprawdź, czy nie ma o jeden cudzysłów za dużo lub za mało.
csv-quote = Tu otwarto cudzysłów i nigdy go nie zamknięto. Od tego miejsca cudzysłowy odczytano jako zwykłe znaki.
csv-not-text = To nie jest tabela zapisana jako tekst. W arkuszu wybierz CSV przy zapisie, potem otwórz ten plik. Nic nie zmieniono.
csv-empty = W tym pliku nic nie ma. Nic nie zmieniono.
csv-too-many-rows = Ten plik ma więcej niż 5 000 wierszy, a więcej obszarów strona nie mieści. Podziel go, na przykład po jednym pliku na zmianę. Nic nie zmieniono.
csv-too-many-columns = Ten plik ma więcej niż 200 kolumn. Zostaw te, których potrzebuje lista obszarów. Nic nie zmieniono.
csv-column-name = Nazwa obszaru
csv-column-size = Wielkość
csv-column-floor = Podłoga
csv-column-product = Produkt
csv-column-machine = Maszyna
csv-column-clean = Czyszczony w tej zmianie
csv-column-place = Miejsce w zmianie
csv-column-opens = Nie wcześniej niż
csv-column-closes = Gotowy do
csv-column-soil = Brud
csv-column-loose = Luźne śmieci
csv-column-lane = Szerokość przejść
csv-column-around = Czego maszyna potrzebuje wokół siebie
csv-column-times = Jak często się go czyści
csv-column-way = Droga od miejsca napełniania
order-best = Zmiany produktu w tej kolejności: { $changes }. Żadna kolejność nie ma ich mniej ani nie kończy się wcześniej.
order-good = Zmiany produktu w tej kolejności: { $changes }. Żadna kolejność nie ma ich mniej niż { $least }.
order-better = Zmiany produktu w lepszej kolejności: { $changes }. Żadna kolejność nie ma ich mniej niż { $least }.
order-sooner = Inna kolejność kończy się wcześniej, a zmian produktu ma tyle samo: { $changes }.
order-keeps = Inna kolejność trzyma się miejsc i godzin wszystkich obszarów, a ta nie. Zmiany produktu w niej: { $changes }.
order-two-first = Dwa obszary nie mogą być oba pierwsze.
order-two-last = Dwa obszary nie mogą być oba ostatnie.
order-no-time = Nie da się skończyć wszystkich tych obszarów na czas. Daj jednemu więcej czasu albo zacznij wcześniej.
figure-shift-changes = Zmiany produktu, każda z opróżnieniem i płukaniem
column-product = Produkt
mistake-nothing-came = Nic nie wypłynęło? Wypróbuj tę nastawę jeszcze raz. Opróżnij to pole, jeśli nie było próby. Do tego czasu próba się nie liczy.
mistake-whole = Wpisz liczbę całkowitą: 1, 2, 3.
area-floor = Podłoga
area-floor-none = Wybierz podłogę
area-add = Dodaj obszar
area-up = W górę
area-up-of = W górę: { $area }
area-remove = Usuń
area-remove-of = Usuń: { $area }
shift-amount = Roztwór roboczy na zmianę
shift-fills = { $n ->
    [one] { $n } napełnienie
    [few] { $n } napełnienia
    [many] { $n } napełnień
   *[other] { $n } napełnienia
}
shift-sentence = { $fills ->
    [one] { $fills } napełnienie: { $water } wody i { $concentrate } koncentratu. { $run } na podłodze, razem { $total }.
    [few] { $fills } napełnienia: { $water } wody i { $concentrate } koncentratu. { $run } na podłodze, razem { $total }.
    [many] { $fills } napełnień: { $water } wody i { $concentrate } koncentratu. { $run } na podłodze, razem { $total }.
   *[other] { $fills } napełnienia: { $water } wody i { $concentrate } koncentratu. { $run } na podłodze, razem { $total }.
}
shift-sentence-machines = Napełnienia: { $fills }, { $water } wody i { $concentrate } koncentratu. Maszyny pracujące obok siebie: { $machines }; ostatnia kończy po { $total }. Praca ludzi: razem { $labour }.
shift-glance = { $fills ->
    [one] { $fills } napełnienie, { $total }
    [few] { $fills } napełnienia, { $total }
    [many] { $fills } napełnień, { $total }
   *[other] { $fills } napełnienia, { $total }
}
shift-fill-table = Napełnienia, po kolei
shift-area-table = Obszary, po kolei
column-fill = Napełnij
column-at = Kiedy
column-area = Obszar
fill-after = · po
column-run = Czas
column-makes = Daje
one-to = 1 do { $n }
column-machine = Maszyna
column-areas = Obszary
column-fills = Napełnienia
column-ends = Koniec
column-labour = Praca
column-passes = Przejazdy
column-step = Krok
column-lasts = Trwa
column-what = Co
column-shift = Ta zmiana
column-month = Miesiąc
column-year = Rok
column-cost = Koszt
column-share = Udział
column-year-containers = Opakowania na rok
column-safety = Zapas bezpieczeństwa
column-reorder = Zamów, gdy zostaje
column-reorder-containers = W opakowaniach
column-own = Jak w planie
column-other = Inaczej
column-change = Różnica
shift-machine-table = Maszyny obok siebie
shift-steps = Każdy krok zmiany
shift-step-table = Kroki, po kolei
act-wait = Czekanie, aż obszar się otworzy
act-mop = Mop na sucho
act-clean = Szorowanie
act-go = Przejazd
act-refill = Napełnienie: opróżnij, wypłucz, napełnij
act-change = Zmiana produktu: opróżnij, wypłucz, napełnij
act-charge = Akumulator: ładowanie
drawing-timeline = { $n ->
    [one] Zmiana w czasie, razem { $time }: bloki z liczbą to obszary, inne to, co jest pomiędzy, pionowa kreska to napełnienie. To samo mówi tabela kroków.
    [few] Zmiana w czasie, { $n } maszyny, razem { $time }: bloki z liczbą to obszary, inne to, co jest pomiędzy, pionowa kreska to napełnienie. To samo mówi tabela kroków.
    [many] Zmiana w czasie, { $n } maszyn, razem { $time }: bloki z liczbą to obszary, inne to, co jest pomiędzy, pionowa kreska to napełnienie. To samo mówi tabela kroków.
   *[other] Zmiana w czasie, { $n } maszyny, razem { $time }: bloki z liczbą to obszary, inne to, co jest pomiędzy, pionowa kreska to napełnienie. To samo mówi tabela kroków.
}
timeline-legend = Liczby to obszary, jak w tabeli niżej; pionowa kreska to napełnienie; litery to, co jest pomiędzy: { $others }.
drawing-costs = Słupki kosztów: { $parts }.
cost-heading = Ile to kosztuje
cost-none = Otwórz „Ceny i zapas” i wpisz, ile co kosztuje: tu pojawi się koszt.
cost-table = Koszt tej zmiany
year-heading = Miesiąc i rok
year-none = Podaj w „Więcej o tym obszarze”, jak często się go czyści: tu pojawią się miesiąc i rok.
year-table = Ta zmiana, miesiąc, rok
year-hint = Każdy obszar bierze za każdym razem tyle, co w tej zmianie. Niezaznaczone obszary liczą się w miesiącu i roku, jeśli podano, jak często.
stock-table = Zapas
stock-formula = Zamów przy d × L + z × s × √L: d to średnie zużycie dnia, L to dni od zamówienia do dostawy, s to różnice między dniami, z = 1,645, przy którym zapas kończy się w 5 na 100 dostaw. Źródło: { $source }
compare = Porównaj z innym produktem lub nastawą
compare-product = Inny produkt
compare-same = Ten sam
compare-setting = Jedna nastawa na wszystkich podłogach
compare-setting-hint = Liczba. Puste oznacza nastawę, której potrzebuje każda podłoga.
compare-table = Obok siebie
compare-equal = to samo
compare-none = Tego nie da się obliczyć: obejrzyj ten produkt i tę nastawę w Dozowaniu i Wypływie.
figure-shift-labour = Praca
figure-year-concentrate = Koncentrat na rok
figure-year-cost = Koszt na rok
figure-shift-solution = Roztwór roboczy
figure-shift-fills = Napełnienia
table-of-machine = { $what }: { $machine }
figure-shift-waste = Ścieki
figure-shift-charges = Ładowania akumulatorów
figure-cost-concentrate = Koncentrat
figure-cost-water = Woda
figure-cost-labour = Praca
figure-cost-total = Koszt
figure-cost-each = Koszt na każdy kawałek podłogi
column-solution = Roztwór
figure-shift-area = Podłoga
figure-shift-run-time = Na podłodze
figure-shift-total-time = Razem, z drogą i czekaniem
figure-shift-water = Woda
figure-shift-concentrate = Koncentrat

cautions-sheet = Odczytaj jego kartę charakterystyki (SDS)
sheet-hint = Wklej tekst karty charakterystyki. To, co znaleziono, stoi obok swojego wiersza; w razie potrzeby popraw to tam. Przyjmuje się tylko to, co zaznaczysz.
sheet-text = Tekst karty charakterystyki
sheet-read = Przejrzyj go
sheet-found = { $n ->
    [one] Znaleziono { $n } rzecz. Porównaj ją z jej wierszem i zaznacz, jeśli się zgadza.
    [few] Znaleziono { $n } rzeczy. Porównaj każdą z jej wierszem i zaznacz te, które się zgadzają.
    [many] Znaleziono { $n } rzeczy. Porównaj każdą z jej wierszem i zaznacz te, które się zgadzają.
   *[other] Znaleziono { $n } rzeczy. Porównaj każdą z jej wierszem i zaznacz te, które się zgadzają.
}
sheet-missing = Nie znaleziono nagłówka tych sekcji: { $sections }.
sheet-cut = Tekst jest dłuższy niż jedna karta: resztę pominięto.
sheet-place = Wiersz { $line }: { $text }
sheet-take = Przyjmij ({ $n }) do produktu { $product }
sheet-taken = Przyjęto do produktu { $product }. Teraz wybierz, jaki to rodzaj produktu, i sprawdź, czy nazwa jest ta sama co w karcie.
sheet-lacks = Nie znaleziono: { $what }. Poszukaj tego w karcie.
sheet-lack-signal = hasło ostrzegawcze
sheet-lack-statements = zwroty o zagrożeniu
sheet-lack-parts = z czego się składa
sheet-lack-ph = pH
sheet-lack-density = gęstość
sheet-doubt-cut-off = Wiersz kończy się w środku kodu. Popraw go według karty.
sheet-signal = Hasło ostrzegawcze: { $word }
sheet-not-hazardous = Nie jest sklasyfikowany jako niebezpieczny
sheet-unknown-code = Kod, którego tu nie znamy: { $code }
sheet-part = Składnik: { $part }
sheet-gear-hands = Co założyć na ręce
sheet-gear-eyes = Co założyć na oczy i twarz
sheet-gear-body = Co założyć na ciało
sheet-gear-breathing = Co założyć do oddychania
sheet-ph = pH { $ph }, { $of }
sheet-of-not-said = karta nie mówi czego
sheet-of-concentrate = koncentratu
sheet-of-use-solution = roztworu roboczego
sheet-of-solution = jakiegoś roztworu
sheet-no-ph = Nie ma pH
sheet-density = Gęstość { $density }
sheet-un = UN { $number }
sheet-not-regulated = To nie jest towar niebezpieczny
sheet-doubt-no-section = Nie ma nad tym nagłówka sekcji.
sheet-doubt-several-lines = Złożone z kilku wierszy.
sheet-doubt-columns = Nazwy, numery i udziały stały w osobnych kolumnach. Sprawdź każdy wiersz.
sheet-doubt-alone = Słowo stoi samo w wierszu.
sheet-doubt-by-words = Znalezione po słowach. Kodu nie wydrukowano.
sheet-doubt-no-cas = Brak numeru CAS.
sheet-doubt-check-digit = Cyfra kontrolna numeru CAS jest zła. Porównaj go z kartą.
sheet-doubt-no-name = Brak nazwy.
sheet-doubt-no-share = Brak udziału.
sheet-doubt-no-percent = Brak znaku procentu. Sprawdź, czy to udział.
sheet-doubt-more-than-whole = Więcej niż 100 %.
sheet-doubt-backwards = Pierwsza liczba jest większa.
sheet-doubt-several-numbers = Pasuje kilka liczb.
sheet-doubt-range = To zakres, a potrzebna jest jedna liczba: środek gęstości, ten koniec pH, który leży dalej od 7.
sheet-doubt-no-unit = Brak jednostki. Odczytano jako gramy w mililitrze.
sheet-doubt-unlikely = Taka liczba jest tu mało prawdopodobna.
sheet-doubt-other-solution = Zmierzone w roztworze, który może nie być twój.
sheet-doubt-of-concentrate = Zmierzone w koncentracie, nie w roztworze roboczym.
sheet-clash-signals = Dwa hasła ostrzegawcze.
sheet-clash-signal-and-statements = Hasło ostrzegawcze nie pasuje do tych zwrotów.
sheet-clash-not-hazardous = Karta mówi, że nie jest niebezpieczny, a wymienia zagrożenia.
sheet-clash-ph-and-statements = Ma skrajne pH, a żaden zwrot nie mówi, że parzy.
sheet-clash-phs = Dwie wartości pH tej samej rzeczy.
sheet-clash-ph-and-none = Jest pH i jest wiersz, który mówi, że pH nie ma.
sheet-clash-densities = Dwie gęstości.
sheet-clash-uns = Dwa numery UN.
sheet-clash-un-and-not-regulated = Jest numer UN i jest wiersz, który mówi, że to nie towar niebezpieczny.
sheet-clash-shares = Dwa udziały jednego składnika.
sheet-clash-more-than-whole = Składniki dają razem więcej niż 100 %.
