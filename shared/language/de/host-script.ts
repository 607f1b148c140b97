// German, not yet reviewed by a native speaker.
import type { HostScript } from '../host-script.ts';

/** What the host says aloud, in German: two or three sentences, to be read out as they stand or said in one's own way. */
export const say: HostScript = {
  cues: {
    gathering: {
      newcomers:
        'Guten Abend, kommt herein. Sucht euch euren Platz, schenkt euch Wasser ein und öffnet die Seite auf eurem Handy. Wissen müsst ihr heute Abend nichts.',
      regulars:
        'Guten Abend, schön, dass ihr wieder da seid. Sucht euren Platz, füllt euer Wasserglas und öffnet die Seite auf dem Handy. Wir fangen an, wenn alle sitzen.',
      devotees:
        'Guten Abend. Nehmt Platz, nehmt Wasser, öffnet die Seite und lasst die Deckel noch drauf. Wir fangen an, wenn alle sitzen.',
    },
    welcome: {
      newcomers:
        'Herzlich willkommen. Heute Abend verkosten wir langsam, ein Glas nach dem anderen, und ich sage euch jeden Schritt an. Was ihr wahrnehmt, ist richtig, weil ihr es wahrnehmt.',
      regulars:
        'Willkommen. Wir gehen Glas für Glas: erst die Sinne, dann der Stift, dann das Gespräch. Lasst euch Zeit, der Raum wartet auf euch.',
      devotees:
        'Willkommen. Heute kommen die Sinne zuerst und die Worte danach, und niemand hört ein Wort, bevor alle ihre eigenen haben. Geben wir diesen Gläsern die Ruhe, die sie verdienen.',
    },
    'ground-rules': {
      newcomers:
        'Ein paar freundliche Regeln. Alle spucken, ich auch. Bis ich das Gespräch eröffne, behaltet ihr für euch, was ihr seht, riecht und schmeckt. Kein Wort ist falsch, und eure Notizen liest niemand, solange ihr sie nicht teilt.',
      regulars:
        'Die Regeln kennt ihr: Alle spucken, wir schweigen bis zum Gespräch, kein Wort ist falsch, und eure Notizen gehören euch. Stimmt bitte auf dem Handy zu.',
      devotees:
        'Es bleibt bei den Regeln: Wir spucken, jeden Schluck, und schweigen bis zum Gespräch; kein Wort ist falsch, und eure Notizen gehören euch. Auch eine hochgezogene Augenbraue ist ein Wort.',
    },
    farewell: {
      newcomers:
        'Danke, dass ihr mit mir verkostet habt. Eure Notizen gehören euch; speichert sie auf dem Handy, bevor ihr geht. Heute setzt sich niemand mehr ans Steuer, also schauen wir, dass alle gut nach Hause kommen.',
      regulars:
        'Danke für eure Gesellschaft und eure Ruhe. Speichert eure Notizen, bevor ihr geht. Heute setzt sich niemand mehr ans Steuer: Sagt mir, wenn ihr nicht wisst, wie ihr heimkommt.',
      devotees:
        'Danke für so viel Aufmerksamkeit. Hebt eure Notizen auf; in einem Jahr liest man sie gern wieder. Heute setzt sich niemand mehr ans Steuer, also sagt mir, wenn ihr nicht wisst, wie ihr heimkommt.',
    },
    ranking: {
      newcomers:
        'In aller Ruhe, alle für sich: Bringt die Gläser auf eurem Handy in eure eigene Rangfolge, das beste zuerst. Es geht nur darum, was euch gefällt.',
      regulars:
        'In aller Ruhe, alle für sich: Bringt die Gläser auf eurem Handy in eure eigene Rangfolge, das beste zuerst. Probiert noch einmal, wenn ihr müsst.',
      devotees:
        'In aller Ruhe, alle für sich: eure Rangfolge auf dem Handy, das beste Glas zuerst. Geht zurück zu den Gläsern und entscheidet euch.',
    },
    'odd-one-out': {
      newcomers:
        'Drei Gläser mit Codes: Zwei sind gleich, eines nicht. Wählt das abweichende; wenn ihr unsicher seid, ratet. Auch Geratenes zählt.',
      regulars:
        'Drei Gläser mit Codes, und eines ist anders. Wählt es, und ratet, wenn ihr müsst: Auch Geratenes zählt.',
      devotees:
        'Drei Codes, und einer davon ist anders. Alle wählen, auch Geratenes zählt; und verzieht keine Miene.',
    },
    discussion: {
      newcomers:
        'Jetzt dürft ihr reden! Euer Handy fragt, was auf den Tisch darf: mit eurem Namen, ohne ihn, oder nichts. Einmal tippen genügt. Dann gehen wir nach der Reihenfolge auf eurem Handy, und wer nicht mag, gibt weiter: Welches eine Wort ist euch lieb?',
      regulars:
        'Das Gespräch ist eröffnet. Tippt auf eurem Handy an, was auf den Tisch kommt, mit oder ohne Namen, und behaltet den Rest. Wir gehen nach der Reihenfolge auf eurem Handy; sagt, wenn euch etwas ganz anderes aufgefallen ist.',
      devotees:
        'Das Gespräch ist eröffnet. Tippt an, was auf den Tisch kommt, mit oder ohne Namen. Fangen wir da an, wo wir uns uneins sind.',
    },
    result: {
      newcomers:
        'Schauen wir, was wir alle zusammen von diesen Gläsern halten. Gezeigt wird nur die Summe, von niemandem die eigene Rangfolge. Denkt an eure; sie ist nicht falsch, wenn sie abweicht.',
      regulars:
        'Schauen wir, was der Raum von diesen Gläsern hält. Gezeigt wird nur die Summe von uns allen. Bleibt bei eurer Rangfolge: Eine Mehrheit riecht nicht besser.',
      devotees:
        'Und nun der Raum. Gezeigt wird nur die Summe; schaut, wo wir auseinandergehen, nicht nur, was gewonnen hat.',
    },
    reveal: {
      newcomers:
        'Und nun die Namen. Schaut erst auf eure Notizen und dann auf das Etikett: Welcher überrascht euch am meisten?',
      regulars:
        'Und nun die Namen. Haltet an euren Notizen fest, während ihr sie hört: Sie handeln vom Glas, nicht vom Etikett.',
      devotees: 'Und nun die Namen. Ein letztes Mal raten, still, bevor ich sie sage.',
    },
  },
  practice: {
    swirl:
      'Üben wir mit klarem Wasser, da kann nichts schiefgehen. Fasst das Glas am Stiel, lasst den Fuß auf dem Tisch und zieht kleine Kreise.',
    look: 'Haltet das Wasser jetzt vor etwas Weißes und neigt es ein wenig. Mehr braucht das Schauen nicht: Licht dahinter und ein Moment Geduld.',
    nose: 'Führt das Glas zur Nase und schließt die Augen. Kurze, sanfte Züge, der Mund ein wenig offen. Wasser riecht nach fast nichts, und damit vergleichen wir.',
    sip: 'Nehmt einen kleinen Schluck, nicht mehr als einen Teelöffel. Bewegt ihn durch den ganzen Mund und zieht ein wenig Luft darüber. Das klingt vielleicht albern, und das soll es auch.',
    spit: 'Und ausspucken, nah am Becher und mit etwas Mut. So: Das Schwerste an diesem Abend liegt hinter euch.',
  },
  steps: {
    spirit: {
      'first/swirl':
        'Nehmt das Glas am Stiel, hebt den Deckel ab und dreht es ein-, zweimal. Langsam: Wir wollen es wecken, nicht hetzen.',
      'first/look':
        'Haltet es vor die weiße Karte und schaut. Wie tief ist die Farbe, und wie läuft es am Glas herunter?',
      'first/nose':
        'Schließt die Augen und führt das Glas von unten zur Nase. Kleine Züge, der Mund leicht offen, und geht damit vor und zurück. Sagt nichts, nehmt nur wahr.',
      'first/sip':
        'Ein kleiner Schluck, gerade genug, um die Zunge zu benetzen. Bewegt ihn überallhin, lasst ihn warm werden und zieht ein wenig Luft darüber.',
      'first/spit':
        'Und ausspucken, bitte, wir alle. Dann atmet langsam durch die Nase aus und spürt nach, was bleibt.',
      'writing/look':
        'Jetzt die Stifte. Schaut noch einmal hin und schreibt vor allem anderen auf, was ihr seht.',
      'writing/nose':
        'Geht mit dem Glas zurück zur Nase, so oft ihr mögt. Schreibt auf, was kommt: eine Frucht, ein Zimmer, ein Sommer, ein fremder Mantel.',
      'writing/sip':
        'Noch ein kleiner Schluck, und lasst ihn durch den ganzen Mund gehen. Achtet diesmal darauf, wie er sich verändert.',
      'writing/spit': 'Spuckt aus, und behaltet eure Worte noch einen Moment im Kopf.',
      'writing/palate':
        'Schreibt den Geschmack auf: was zuerst kam, was danach, und wie es sich im Mund angefühlt hat.',
      'writing/finish':
        'Und nun der Abgang. Wie lange bleibt er, und was geht als Letztes? Schreibt das auf.',
      'closing/review':
        'Lest eure Seite von oben bis unten und geht zurück zum Glas. Ist das noch da? Ändert, was nicht mehr stimmt.',
      'closing/reflect':
        'Stellt das Glas ab. Eine Zeile darüber, woran euch das erinnert oder was ihr dabei fühlt. Um das Getränk muss es gar nicht gehen.',
    },
    wine: {
      'first/swirl':
        'Lasst den Fuß auf dem Tisch und zieht ein paar kleine Kreise. Die Arbeit macht die Luft; ihr ladet sie nur ein.',
      'first/look':
        'Neigt das Glas über die weiße Karte und schaut von oben: erst in die Mitte, dann auf den Rand. Wie verblasst die Farbe?',
      'first/nose':
        'Augen zu, Nase ins Glas, ein langer, ruhiger Zug. Dann ein paar kurze. Sagt nichts, nehmt nur wahr.',
      'first/sip':
        'Ein kleiner Schluck, und lasst ihn die ganze Zunge bedecken. Zieht ein wenig Luft hindurch. Wo spürt ihr ihn: an den Seiten, am Zahnfleisch, am Gaumen?',
      'first/spit': 'Und ausspucken, bitte, wir alle. Zählt still, wie lange er bei euch bleibt.',
      'writing/look':
        'Jetzt die Stifte. Neigt das Glas noch einmal und schreibt vor allem anderen die Farbe und den Rand auf.',
      'writing/nose':
        'Zurück zur Nase, und schwenkt, wann immer sie still wird. Schreibt auf, was kommt: Früchte, Blumen, eine Küche, ein Waldboden.',
      'writing/sip':
        'Noch ein Schluck und etwas Luft. Achtet diesmal auf Frische, auf Süße und darauf, wie er zupackt.',
      'writing/spit': 'Spuckt aus, und behaltet eure Worte noch einen Moment im Kopf.',
      'writing/palate':
        'Schreibt den Geschmack auf und das Gefühl: was frisch ist, was trocken, was rund, und in welcher Reihenfolge.',
      'writing/finish':
        'Und nun der Abgang. Wie lange bleibt er, und macht er Lust, etwas zu essen? Schreibt das auf.',
      'closing/review':
        'Lest eure Seite von oben bis unten und geht zurück zum Glas: Es hatte inzwischen Luft. Ist das alles noch da? Ändert, was nicht mehr stimmt.',
      'closing/reflect':
        'Stellt das Glas ab. Eine Zeile darüber, wohin euch dieser Wein geführt hat, oder mit wem ihr ihn öffnen würdet.',
    },
    beer: {
      'first/swirl':
        'Dreht das Glas sanft, zwei-, dreimal, um den Schaum zu wecken. Seid schnell: Was jetzt aufsteigt, ist bald fort.',
      'first/look':
        'Haltet es vor die weiße Karte. Wie klar ist es, wie tief, und wie haftet der Schaum am Glas?',
      'first/nose':
        'Gleich mit der Nase über den Schaum, kurze Züge, Augen zu. Dann noch einmal aus größerem Abstand. Sagt nichts, nehmt nur wahr.',
      'first/sip':
        'Ein Schluck, groß genug, um die Kohlensäure zu spüren, einmal ganz herum. Wartet auf die Bittere, sie kommt zuletzt.',
      'first/spit':
        'Und ausspucken, bitte, wir alle, auch beim Bier. Dann atmet durch die Nase aus: Da kommt noch viel.',
      'writing/look':
        'Jetzt die Stifte. Farbe, Trübung und Schaum: Schreibt auf, was ihr seht, bevor er sich setzt.',
      'writing/nose':
        'Einmal drehen, und zurück zur Nase. Schreibt auf, was kommt: Brot, Gras, Frucht, Gewürz, ein Bauernhof, alles ist willkommen.',
      'writing/sip':
        'Noch ein Schluck, und lasst die Kohlensäure auf der Zunge vergehen. Achtet diesmal auf süß gegen bitter.',
      'writing/spit': 'Spuckt aus, und behaltet eure Worte noch einen Moment im Kopf.',
      'writing/palate':
        'Schreibt den Geschmack auf und den Körper: schlank oder voll, weich oder prickelnd, und was unter der Bittere liegt.',
      'writing/finish': 'Und nun der Abgang. Ist er sauber, bleibt er, ist er trocken? Schreibt das auf.',
      'closing/review':
        'Lest eure Seite von oben bis unten und geht zurück zum Glas, das jetzt wärmer ist. Ist das alles noch da? Ändert, was nicht mehr stimmt.',
      'closing/reflect':
        'Stellt das Glas ab. Eine Zeile über den Ort oder das Wetter, bei dem ihr dieses Bier gern hättet.',
    },
  },
  more: {
    newcomers: {
      'first/look': 'Eine richtige Antwort gibt es nicht; das erste Wort ist gut genug.',
      'first/nose': 'Wenn ihr gar nichts riecht, macht eine Pause und versucht es wieder: Das geht allen so.',
      'first/sip': 'Erst ist es vielleicht stark oder fremd; der zweite Moment sagt euch mehr.',
      'writing/nose': 'Ihr könnt aus den Wörtern auf eurem Handy wählen, wenn die eigenen nicht kommen.',
      'writing/palate': 'Drei Wörter sind reichlich.',
    },
    regulars: {
      'first/nose': 'Versucht abwechselnd das linke und das rechte Nasenloch.',
      'writing/palate': 'Schreibt es in der Reihenfolge auf, in der es kam, wenn ihr könnt.',
    },
    devotees: {
      'first/look': 'Merkt es euch still; der Stift wartet auf den zweiten Durchgang.',
      'first/nose': 'Sucht erst nach Familien, dann nach Einzelnem, und legt euch noch nicht fest.',
      'writing/nose':
        'Seid so genau, wie ihr könnt: nicht Frucht, sondern welche; nicht welche, sondern wie reif.',
      'writing/palate': 'Trennt, was ihr schmeckt, von dem, was ihr spürt.',
      'writing/finish': 'Gebt ihm Zeit; was spät kommt, ist oft das Beste.',
    },
  },
  water: {
    spirit:
      'Wasser, bitte: ein guter Schluck, und noch einer. Ist die Nase müde, riecht am eigenen Handrücken; den kennt sie am besten.',
    wine: 'Wasser, bitte, und ein Bissen einfaches Brot, wenn ihr mögt. Das nächste Glas wünscht sich einen sauberen Mund.',
    beer: 'Wasser, bitte, und ein Bissen einfaches Brot, wenn ihr mögt. Lasst die Bittere gehen, bevor das nächste kommt.',
  },
  break: {
    planned:
      'Jetzt eine Pause. Steht auf, öffnet ein Fenster, trinkt Wasser und esst eine Kleinigkeit. Lasst die nächsten Gläser stehen, wie sie sind; ich rufe euch zurück.',
    called:
      'Machen wir hier ein paar Minuten Pause. Wasser, Luft, was ihr braucht. Nichts geht verloren: Danach beginnen wir diesen Schritt von vorn.',
  },
  beforeTalk: {
    newcomers:
      'Schreibt euren Satz zu Ende, und dann legt den Stift weg. Gleich reden wir, und euer Handy fragt, was von eurer Seite auf den Tisch darf. Bis dahin gehört sie euch allein.',
    regulars:
      'Schreibt bitte euren Satz zu Ende, und dann die Stifte weg. Gleich reden wir, und euer Handy fragt, was auf den Tisch darf; schaut noch ein letztes Mal auf eure Seite.',
    devotees:
      'Schreibt euren Satz zu Ende, dann die Stifte weg. Von hier an bleiben eure Notizen, wie sie sind; was davon auf den Tisch kommt, fragt euch euer Handy.',
  },
  rankingNamed:
    'Jetzt, wo ihr die Namen kennt: Bringt die Gläser auf eurem Handy in eure eigene Rangfolge, das beste zuerst. Versucht, das Glas zu bewerten und nicht das Etikett.',
  drops:
    'Jetzt das Wasser: drei Tropfen, nicht mehr, und eine langsame Drehung. Gebt ihm einen Moment, dann vergleicht mit dem, was ihr pur bemerkt habt.',
  anyStep: 'Lasst euch hierfür Zeit, und bleibt bei eurem eigenen Glas.',
};
