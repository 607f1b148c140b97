/** German words of which four are drawn for a guest: short, common, easily told apart, and none that hurts. */
export const germanWords = `
  abend acker adler ahorn akazie allee amboss amsel ananas anker antenne apfel aprikose arena armband arzt
  asche atlas aue auge august auster bach bagger balkon ball banane band bank bart basalt bauer baum becher
  beere berg bernstein besen biber biene birke birne blatt blau blitz blume bogen bohne boot brille brot
  bruder brunnen buch bucht burg bus butter dach dachs dampf decke delfin diamant dichter distel donner dorf
  drache drossel eiche eimer eis elch elefant elster engel ente erbse erde erle ernte esche esel eule fabrik
  faden fahne falke farbe farn fass feder feige feld fell fels fenster feuer fichte figur film finger fink
  fisch flamme flasche floh flur fluss flut forelle forst frosch frost fuchs funke gabel galerie gans garten
  gecko geige gemse gerste giraffe glas glocke gold grafik granit gras grille gurke hafen hafer hagel hahn
  hain halle halm hammer hand harfe harz hase haus hecht hecke heft heide helm hemd herbst herd hering
  himmel hirsch hirte hobel holz honig hopfen horn hose hotel hund hut igel iltis imker ingwer insel jacke
  jade jagd januar jasmin juli juni kabel kaffee kajak kaktus kalender kamel kamin kamm kanal kanne kanu
  karte kasten kater katze kegel keks keller kerze kessel kette kiefer kiesel kino kirche kirsche kissen
  kiste klang klavier klee klippe knopf knoten kobold koch koffer kohle komet kompass konzert kopf korb
  korken korn krabbe kran kranich kranz kraut kreide kreis krone krug kuchen kugel kupfer kurve lachs lager
  lampe land laterne laub lavendel leder lehm lehrer leiter lerche licht liebe lied linde linse lippe liste
  lotse luchs luft lupe magnet mai mais maler mandel mantel marder markt marmor maske mast matrose mauer
  maus meer mehl meise melone metall milch minze mohn mond moos morgen motor mulde museum musik mutter nadel
  nagel nase nebel nektar nelke nest netz nickel norden note nuss oase oboe obst ofen ohr oktober olive
  onkel oper optik orange orgel orkan osten otter paket palast palme panda papier pappel park pass pauke
  pegel pelikan perle pfad pfeffer pferd pfirsich pflaume pilot pilz pinguin pinie pinsel pirat planet platz
  polster pony post prisma puder pulli punkt puppe quarz quelle rabe radio rahmen rakete rand rasen rauch
  rebe regal regen reh reif reis reise rest rinde ring robbe roggen rohr rolle rose rubin ruder ruhe saal
  sache safran saft sahne salat salbei salz samen samt sand sattel schach schaf schal schatten schiff schilf
  schirm schlitten schnee schnur schuh schule schwan see segel seide seife seil senf sieb silber sofa sommer
  sonne spargel spatz speer spiegel spinat stadt stall stamm stein stern stiefel stier strand stroh strom
  stuhl sturm tafel tal talent tango tanne tante tanz tapete tasche tasse taube tee teich teller tempel
  tenor teppich theater thymian tiger tinte tisch tomate topf tor torte traube treppe trommel tuch tulpe
  tunnel turm ufer uhr ulme urlaub vanille vase veilchen vogel vorhang vulkan waage wabe wachs waffel wagen
  wal wald walnuss wange wanne wasser watte weide weizen welle welt weste wetter wiese wimpel wind winter
  wirbel wolf wolke wolle wurzel zange zaun zebra zeder zeit zelt ziege ziegel zimt zirkus zitrone zucker
  zug zunge zweig zwiebel
`
  .trim()
  .split(/\s+/);
