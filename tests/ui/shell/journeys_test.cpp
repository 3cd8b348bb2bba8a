#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QFile>
#include <QLineEdit>
#include <QLocale>
#include <QTest>
#include <numeric>

#include "core/medicine/paths.h"
#include "core/number/decimal_text.h"
#include "tests/ui/shell/nurse.h"
#include "tests/ui/support/qt_class.h"
#include "ui/form/field_edit.h"

namespace wardchalk::ui::journeys_test {

namespace {

QStringList texts(std::initializer_list<const char*> all) {
  QStringList list;
  for (const char* text : all) list << QString::fromUtf8(text);
  return list;
}

/// Height, weight, age; medicine, route, dose, schedule; from, up to, schedule, for medicine, source, most in
/// one dose and in 24 h; kind, label.
const QStringList usualCase =
    texts({"103 cm", "17.2 kg", "", "Plover", "oral", "80 mg", "every 12 h", "", "120 mg/m2/dose",
           "every 12 h", "", "Bench list, p. 4", "", "", "liquid", "25 mg in 1 mL"});

QStringList usualWith(qsizetype place, const char* text) {
  QStringList fields = usualCase;
  fields[place] = QString::fromUtf8(text);
  return fields;
}

constexpr qsizetype dosePlace = 5;

std::string measured(const Worksheet& sheet) {
  return sheet.give && sheet.give->measured ? exactText(*sheet.give->measured) : "none";
}

}  // namespace

/// Stories told by keyboard alone, in an English and in a German desktop.
class JourneysTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void initTestCase_data();
  void init();
  void cleanup();

  void metricSurfaceLiquid();
  void asANurseAbbreviates();
  void aFirstVerdictByWeightInFewKeys();
  void householdSurfacePowder();
  void dailyWeightTablet();
  void verdicts_data();
  void verdicts();
  void halfTypedNumberIsNeverJudged();
  void refusedMaximumWithholdsTheVerdict();
  void commaIsRefusedInEveryLocale();
  void unitSystemRelabelsNothing();
  void aHouseThatSaysMetricAsksForNoUnit();
  void workingIsCopiedAsText();
  void undoTakesBackAWholeEntry();

 private:
  std::unique_ptr<Nurse> nurse_;
};

void JourneysTest::initTestCase_data() {
  QTest::addColumn<QLocale>("locale");
  QTest::newRow("English") << QLocale(QLocale::English, QLocale::UnitedStates);
  QTest::newRow("German") << QLocale(QLocale::German, QLocale::Germany);
}

void JourneysTest::init() {
  QFETCH_GLOBAL(QLocale, locale);
  QLocale::setDefault(locale);
  nurse_ = std::make_unique<Nurse>();
}

void JourneysTest::cleanup() { nurse_.reset(); }

void JourneysTest::metricSurfaceLiquid() {
  nurse_->fill(usualCase);
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::safe);
  QCOMPARE(measured(nurse_->sheet()), std::string("3.2"));
  QCOMPARE(nurse_->line(QStringLiteral("order.schedule")), QStringLiteral("2 doses in 24 h, one every 12 h"));
}

/// The same case as a nurse abbreviates, and counted: bar of the usual case 90 keys, of a first verdict 38.
void JourneysTest::asANurseAbbreviates() {
  nurse_->press(Qt::Key_1, Qt::ControlModifier);
  const auto keysOf = [](const QStringList& fields) {
    return std::accumulate(fields.begin(), fields.end(), qsizetype(0),
                           [](qsizetype sum, const QString& text) { return sum + text.size() + 1; });
  };
  const QStringList usual = texts({"103", "17.2kg", "", "Plover", "po", "80mg", "q12h", "", "120mg/m2/dose",
                                   "q12h", "", "p. 4", "", "", "liquid", "25mg/ml"});
  nurse_->fill(usual);
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::safe);
  QCOMPARE(measured(nurse_->sheet()), std::string("3.2"));
  QVERIFY2(keysOf(usual) <= 90, qPrintable(QString::number(keysOf(usual))));
}

void JourneysTest::aFirstVerdictByWeightInFewKeys() {
  const QStringList first = texts({"", "20kg", "", "", "", "80mg", "q8h", "", "5mg/kg/dose", "q8h"});
  qsizetype keys = 0;
  for (const QString& field : first) keys += field.size() + 1;
  nurse_->fill(first);
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::ask);
  QVERIFY2(keys <= 38, qPrintable(QString::number(keys)));
}

/// 41 in × 37.25 lb ÷ 3131 = 0.48778…, its root 0.698… is 0.70 m²; 200 mg in 5 mL is 40 mg in 1 mL: 80 mg are
/// 2 mL.
void JourneysTest::householdSurfacePowder() {
  nurse_->press(Qt::Key_2, Qt::ControlModifier);
  nurse_->fill(texts({"3ft 5in", "37lb 4oz", "", "Wren", "oral", "80 mg", "every 12 h", "", "120 mg/m2/dose",
                      "every 12 h", "Wren", "", "", "", "powder"}));
  QCOMPARE(nurse_->focused(), QStringLiteral("stock.content:text"));
  nurse_->fill(texts({"200 mg", "4.8 mL", "5 mL"}));
  QCOMPARE(nurse_->window().editor().draft().text(path::height), std::string("3 ft 5 in"));
  QCOMPARE(nurse_->window().editor().draft().text(path::weight), std::string("37 lb 4 oz"));
  QCOMPARE(exactText(nurse_->sheet().bsa->m2), std::string("0.7"));
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::safe);
  QCOMPARE(measured(nurse_->sheet()), std::string("2"));
}

/// 15 mg/kg/day × 20 kg = 300 mg in 24 h, in 3 doses 100 mg each: two tablets of 50 mg.
void JourneysTest::dailyWeightTablet() {
  nurse_->fill(texts({"", "20 kg", "", "Dunlin", "oral", "100 mg", "3 times a day", "", "15 mg/kg/day",
                      "3 times a day", "", "", "", "", "tablet", "50 mg/tablet"}));
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::safe);
  QCOMPARE(measured(nurse_->sheet()), std::string("2"));
}

void JourneysTest::verdicts_data() {
  QTest::addColumn<QStringList>("fields");
  QTest::addColumn<VerdictKind>("verdict");
  QTest::newRow("safe") << usualCase << VerdictKind::safe;
  QTest::newRow("at the limit") << usualWith(dosePlace, "84 mg/dose") << VerdictKind::safe;
  QTest::newRow("too little") << usualWith(dosePlace, "60 mg/dose") << VerdictKind::ask;
  QTest::newRow("too much") << usualWith(dosePlace, "84.1 mg/dose") << VerdictKind::unsafe;
  QTest::newRow("no height") << usualWith(0, "") << VerdictKind::undecided;
  QTest::newRow("no basis") << usualWith(dosePlace, "") << VerdictKind::undecided;
}

void JourneysTest::verdicts() {
  QFETCH(QStringList, fields);
  QFETCH(VerdictKind, verdict);
  nurse_->fill(fields);
  QCOMPARE(nurse_->sheet().verdict, verdict);
  QCOMPARE(nurse_->sheet().give.has_value(), verdict == VerdictKind::safe || verdict == VerdictKind::ask);

  if (verdict != VerdictKind::safe) return;
  nurse_->press(Qt::Key_F8);  // the rarer fields: an age band that leaves this child out
  QVERIFY(nurse_->walkTo(QStringLiteral("stock.strength")));
  nurse_->press(Qt::Key_F5);
  while (!nurse_->focused().startsWith(QStringLiteral("reference.age_from")))
    nurse_->press(Qt::Key_Return, Qt::ShiftModifier);
  nurse_->fill(texts({"12 year"}));
  while (!nurse_->focused().startsWith(QStringLiteral("child.age")))
    nurse_->press(Qt::Key_Return, Qt::ShiftModifier);
  nurse_->fill(texts({"4 year 2 month"}));
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::notCovered);
}

void JourneysTest::halfTypedNumberIsNeverJudged() {
  nurse_->fill(usualCase);
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::safe);
  while (nurse_->focused() != QStringLiteral("order.dose:text"))
    nurse_->press(Qt::Key_Return, Qt::ShiftModifier);
  for (const char* key : {"8", "0", "0", " ", "m", "g"}) {
    nurse_->type(QString::fromLatin1(key));
    QCOMPARE(nurse_->sheet().verdict, VerdictKind::undecided);
    QVERIFY(nurse_->sheet().finding(FindingCode::finishTyping));
    QVERIFY(!nurse_->sheet().give);
    for (const Check& check : nurse_->sheet().checks)
      QVERIFY(check.status != CheckStatus::within && check.status != CheckStatus::outside);
  }
  nurse_->enter();
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::unsafe);
}

void JourneysTest::refusedMaximumWithholdsTheVerdict() {
  nurse_->fill(usualCase);
  nurse_->press(Qt::Key_F8);
  while (!nurse_->focused().startsWith(QStringLiteral("reference.max_per_dose")))
    nurse_->press(Qt::Key_Return, Qt::ShiftModifier);
  nurse_->fill(texts({"3OO mg"}));
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::undecided);
  QVERIFY(!nurse_->sheet().give);
  auto* box = nurse_->window().findChild<QLineEdit*>(QStringLiteral("reference.max_per_dose:text"));
  QCOMPARE(box->text(), QStringLiteral("3OO mg"));
  QVERIFY(!nurse_->line(QStringLiteral("reference.max_per_dose")).isEmpty());
}

void JourneysTest::commaIsRefusedInEveryLocale() {
  nurse_->fill(texts({"103 cm", "17,2 kg"}));
  QCOMPARE(nurse_->window().editor().draft().state(path::weight), FieldState::refused);
  QVERIFY2(nurse_->line(QStringLiteral("child.weight")).contains(QStringLiteral("comma")),
           qPrintable(nurse_->line(QStringLiteral("child.weight"))));
}

void JourneysTest::unitSystemRelabelsNothing() {
  const CaseDraft& draft = nurse_->window().editor().draft();
  nurse_->press(Qt::Key_1, Qt::ControlModifier);
  nurse_->fill(texts({"103"}));
  QCOMPARE(draft.text(path::height), std::string("103 cm"));
  nurse_->press(Qt::Key_2, Qt::ControlModifier);
  QCOMPARE(draft.text(path::height), std::string("103 cm"));
  nurse_->fill(texts({"37"}));  // a bare weight is asked about, whatever the system
  QCOMPARE(draft.state(path::weight), FieldState::refused);
}

/// The house's word stands in the empty lines; a user's own ends with the child.
void JourneysTest::aHouseThatSaysMetricAsksForNoUnit() {
  QFile rules(nurse_->folder() + QStringLiteral("/rules.json"));
  QVERIFY(rules.open(QIODevice::WriteOnly));
  rules.write(
      R"({"format": "wardchalk.house-rules", "version": 1, "name": "ward", "unit_system": "metric"})");
  rules.close();
  nurse_->dialogs().rules = rules.fileName();
  nurse_->rules().openFile();
  const CaseDraft& draft = nurse_->window().editor().draft();
  nurse_->fill(texts({"103", "17.2"}));
  QCOMPARE(draft.text(path::height), std::string("103 cm"));
  QCOMPARE(draft.text(path::weight), std::string("17.2 kg"));
  nurse_->press(Qt::Key_2, Qt::ControlModifier);
  QCOMPARE(draft.offered(), (BareUnits{Unit::in, std::nullopt}));
  nurse_->dialogs().answer = Unsaved::discard;
  nurse_->press(Qt::Key_N, Qt::ControlModifier);
  QCOMPARE(draft.offered(), (BareUnits{Unit::cm, Unit::kg}));
}

void JourneysTest::workingIsCopiedAsText() {
  nurse_->fill(usualCase);
  nurse_->press(Qt::Key_C, Qt::ControlModifier | Qt::ShiftModifier);
  const QString text = QApplication::clipboard()->text();
  QVERIFY(text.contains(QStringLiteral("SAFE by this reference")));
  QVERIFY(text.contains(QStringLiteral("3.2 mL")));
}

void JourneysTest::undoTakesBackAWholeEntry() {
  nurse_->fill(texts({"103 cm", "17.2 kg"}));
  nurse_->press(Qt::Key_Z, Qt::ControlModifier);
  const CaseDraft& draft = nurse_->window().editor().draft();
  QCOMPARE(draft.state(path::weight), FieldState::empty);
  QCOMPARE(draft.state(path::height), FieldState::read);
  QCOMPARE(nurse_->focused(), QStringLiteral("child.weight:text"));
  nurse_->press(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
  QCOMPARE(draft.text(path::weight), std::string("17.2 kg"));
}

WARDCHALK_QT_TEST(JourneysTest)

}  // namespace wardchalk::ui::journeys_test

#include "journeys_test.moc"
