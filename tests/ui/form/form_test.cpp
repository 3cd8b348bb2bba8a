#include "ui/form/form.h"

#include <QCheckBox>
#include <QClipboard>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTest>
#include <QWheelEvent>

#include "core/medicine/paths.h"
#include "tests/ui/support/qt_class.h"
#include "ui/form/choice_box.h"
#include "ui/form/field_edit.h"
#include "ui/form/form_group.h"

namespace wardchalk::ui::form_test {

namespace {

QString pathOf(std::string_view path) {
  return QString::fromUtf8(path.data(), static_cast<qsizetype>(path.size()));
}

}  // namespace

class FormTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void init();
  void cleanup();

  void enterGoesToTheNextFieldAndShiftEnterBack();
  void enterStopsAtABoxThatIsStillToBeFilledIn();
  void aTypedUnitChoosesItself();
  void aTypedUnitReplacesTheChosenOne();
  void leavingAFieldReadsIt();
  void anotherWindowDoesNotEndTheTyping();
  void choosingAUnitFromTheListReadsAtOnce();
  void walkingOverUnitsByKeyWaitsForEnter();
  void theWheelChangesNothing();
  void theLastFieldSaysPressEnter();
  void refusedTextStaysWithItsReason();
  void aPastedUnseenCharacterStaysAndIsRefused_data();
  void aPastedUnseenCharacterStaysAndIsRefused();
  void unsafeAbbreviationsAreAnswered_data();
  void unsafeAbbreviationsAreAnswered();
  void everyKeyReachesTheBox();
  void readBackOfADose();
  void rarerFieldsUnfoldWithTheirGroup();
  void aFieldThatComesIntoViewLaterHasItsPlace();
  void aFoldedFieldThatHoldsSomethingIsInView();
  void powderAsksForItsMixing();
  void householdShowsTwoBoxes();
  void undoKeyGoesToTheFormsHistory();
  void nothingIsChosenBeforehand();

 private:
  QWidget* at() const { return QApplication::focusWidget(); }
  void go(std::string_view path) { form_->focusField(pathOf(path)); }
  void type(const char* text) { QTest::keyClicks(at(), QString::fromUtf8(text)); }
  void enter(Qt::KeyboardModifiers with = Qt::NoModifier) { QTest::keyClick(at(), Qt::Key_Return, with); }
  QString line(std::string_view path) const { return form_->field(pathOf(path))->line(); }
  template <typename T>
  T* box(const char* name) const {
    return form_->findChild<T*>(QString::fromLatin1(name));
  }

  std::unique_ptr<CaseEditor> editor_;
  std::unique_ptr<Form> form_;
};

void FormTest::init() {
  editor_ = std::make_unique<CaseEditor>();
  form_ = std::make_unique<Form>(*editor_, exactRules());
  form_->resize(480, 720);
  form_->show();
  QVERIFY(QTest::qWaitForWindowActive(form_.get()));
  go(path::height);
}

void FormTest::cleanup() {
  form_.reset();
  editor_.reset();
}

void FormTest::enterGoesToTheNextFieldAndShiftEnterBack() {
  type("103 cm");
  enter();
  QCOMPARE(at()->objectName(), QStringLiteral("child.weight:text"));
  enter(Qt::ShiftModifier);
  QCOMPARE(at()->objectName(), QStringLiteral("child.height:text"));
}

void FormTest::enterStopsAtABoxThatIsStillToBeFilledIn() {
  go(path::dose);
  type("80");
  enter();
  QCOMPARE(at()->objectName(), QStringLiteral("order.dose:unit"));
  QCOMPARE(editor_->draft().state(path::dose), FieldState::pending);
  type("mg");
  enter();
  QCOMPARE(at()->objectName(), QStringLiteral("order.dose:second-unit"));
  QTest::keyClick(at(), Qt::Key_Down);
  enter();
  QCOMPARE(editor_->draft().state(path::dose), FieldState::read);
  QCOMPARE(editor_->draft().text(path::dose), std::string("80 mg/dose"));
}

void FormTest::aTypedUnitChoosesItself() {
  type("3 ft 5 in");
  enter();
  QCOMPARE(box<QLineEdit>("child.height:text")->text(), QStringLiteral("3"));
  QCOMPARE(box<QLineEdit>("child.height:second")->text(), QStringLiteral("5"));
  QCOMPARE(box<ChoiceBox>("child.height:unit")->chosen(), std::string("ft in"));
  QCOMPARE(line(path::height), QStringLiteral("= 104.14 cm"));
}

void FormTest::aTypedUnitReplacesTheChosenOne() {
  editor_->offer(UnitSystem::metric);
  go(path::weight);
  type("37 lb");
  enter();
  QCOMPARE(editor_->draft().text(path::weight), std::string("37 lb"));
}

void FormTest::leavingAFieldReadsIt() {
  type("103 cm");
  QCOMPARE(editor_->draft().state(path::height), FieldState::pending);
  go(path::medicine);
  QCOMPARE(editor_->draft().state(path::height), FieldState::read);
}

void FormTest::anotherWindowDoesNotEndTheTyping() {
  type("10");
  QFocusEvent away(QEvent::FocusOut, Qt::ActiveWindowFocusReason);
  QApplication::sendEvent(at(), &away);
  QCOMPARE(editor_->draft().state(path::height), FieldState::pending);
}

void FormTest::choosingAUnitFromTheListReadsAtOnce() {
  type("103");
  auto* unit = box<ChoiceBox>("child.height:unit");
  unit->setFocus();
  unit->setCurrentIndex(1);
  QCOMPARE(editor_->draft().state(path::height), FieldState::read);
  QCOMPARE(editor_->draft().text(path::height), std::string("103 cm"));
}

void FormTest::walkingOverUnitsByKeyWaitsForEnter() {
  go(path::weight);
  type("17.2 kg");
  enter();
  auto* unit = box<ChoiceBox>("child.weight:unit");
  unit->setFocus();
  QTest::keyClick(unit, Qt::Key_Down);
  QCOMPARE(unit->chosen(), std::string("g"));
  QCOMPARE(editor_->draft().state(path::weight), FieldState::pending);
  enter();
  QCOMPARE(editor_->draft().state(path::weight), FieldState::read);
}

void FormTest::theWheelChangesNothing() {
  auto* unit = box<ChoiceBox>("child.weight:unit");
  unit->setFocus();
  QWheelEvent wheel(QPointF(5, 5), unit->mapToGlobal(QPointF(5, 5)), QPoint(), QPoint(0, -120), Qt::NoButton,
                    Qt::NoModifier, Qt::NoScrollPhase, false);
  QApplication::sendEvent(unit, &wheel);
  QVERIFY(!unit->isChosen());
}

void FormTest::theLastFieldSaysPressEnter() {
  go(path::strength);
  type("25 mg/m");
  QCOMPARE(line(path::strength), QStringLiteral("press Enter"));
  type("L");
  enter();
  QCOMPARE(line(path::strength), QStringLiteral("25 mg in each mL"));
}

void FormTest::refusedTextStaysWithItsReason() {
  go(path::weight);
  type(".5 kg");
  enter();
  QCOMPARE(box<QLineEdit>("child.weight:text")->text(), QStringLiteral(".5 kg"));
  QVERIFY2(line(path::weight).contains(QStringLiteral("0.5")), qPrintable(line(path::weight)));
  QVERIFY(!box<QLineEdit>("child.weight:text")->accessibleDescription().isEmpty());
}

void FormTest::aPastedUnseenCharacterStaysAndIsRefused_data() {
  QTest::addColumn<QString>("path");
  QTest::addColumn<QString>("pasted");
  QTest::addColumn<QString>("number");
  for (const char* path : {"order.medicine", "reference.source"}) {
    const QString field = QString::fromLatin1(path);
    const auto row = [&](const char* name, const QString& pasted, const char* number) {
      QTest::addRow("%s in %s", name, path) << field << pasted << QString::fromLatin1(number);
    };
    row("line feed", QStringLiteral("Plo\nver"), "U+000A");
    row("line feed last", QStringLiteral("Plover\n"), "U+000A");
    row("carriage return", QStringLiteral("Plo\r\nver"), "U+000D");
    row("tab", QStringLiteral("Plo\tver"), "U+0009");
    row("escape", QStringLiteral("Plo\u001B[2Jver"), "U+001B");
    row("line separator", QStringLiteral("Plo\u2028ver"), "U+2028");
    row("paragraph separator", QStringLiteral("Plo\u2029ver"), "U+2029");
    row("right-to-left override", QStringLiteral("Plover\u202E"), "U+202E");
    row("isolate", QStringLiteral("\u2067Plover"), "U+2067");
    row("zero-width space", QStringLiteral("Plo\u200Bver"), "U+200B");
    row("byte order mark", QStringLiteral("\uFEFFPlover"), "U+FEFF");
  }
}

void FormTest::aPastedUnseenCharacterStaysAndIsRefused() {
  QFETCH(QString, path);
  QFETCH(QString, pasted);
  QFETCH(QString, number);
  form_->focusField(path);
  QGuiApplication::clipboard()->setText(pasted);
  QTest::keyClick(at(), Qt::Key_V, Qt::ControlModifier);
  enter();
  QCOMPARE(editor_->draft().boxes(path.toStdString()).text, pasted.toStdString());
  QCOMPARE(form_->findChild<QLineEdit*>(path + QStringLiteral(":text"))->text(), pasted);
  const QString said = form_->field(path)->line();
  QVERIFY2(said.contains(number) && said.contains(QStringLiteral("Type it anew")), qPrintable(said));
}

void FormTest::unsafeAbbreviationsAreAnswered_data() {
  QTest::addColumn<QString>("path");
  QTest::addColumn<QString>("typed");
  QTest::addColumn<QString>("safe");
  QTest::newRow("microgram sign") << "order.dose" << QStringLiteral("80 µg") << "mcg";
  QTest::newRow("U") << "order.dose"
                     << "5 U"
                     << "units";
  QTest::newRow("IU") << "order.dose"
                      << "5 IU"
                      << "units";
  QTest::newRow("cc") << "order.dose"
                      << "5 cc"
                      << "mL";
  QTest::newRow("QD") << "order.schedule"
                      << "QD"
                      << "daily";
  QTest::newRow("QOD") << "order.schedule"
                       << "QOD"
                       << "every 2 day";
  QTest::newRow("per d") << "reference.high"
                         << "5 mg/kg/d"
                         << "/day";
  QTest::newRow("percent") << "stock.strength"
                           << "1 %"
                           << "10 mg/mL";
  QTest::newRow("ratio") << "stock.strength"
                         << "1:1000"
                         << "1 mg/mL";
}

void FormTest::unsafeAbbreviationsAreAnswered() {
  QFETCH(QString, path);
  QFETCH(QString, typed);
  QFETCH(QString, safe);
  form_->focusField(path);
  QTest::keyClicks(at(), typed);
  enter();
  QCOMPARE(form_->field(path)->findChild<QLineEdit*>(path + QLatin1String(":text"))->text(), typed);
  QVERIFY2(form_->field(path)->line().contains(safe), qPrintable(form_->field(path)->line()));
}

void FormTest::everyKeyReachesTheBox() {
  type("1,e-5½x /:");
  QCOMPARE(box<QLineEdit>("child.height:text")->text(), QString::fromUtf8("1,e-5½x /:"));
}

void FormTest::readBackOfADose() {
  go(path::dose);
  type("160 mg/kg/dose");
  enter();
  QCOMPARE(line(path::dose), QStringLiteral("160 mg for each kg, each dose"));
}

void FormTest::rarerFieldsUnfoldWithTheirGroup() {
  FieldEdit* charted = form_->field(pathOf(path::bsa));
  QVERIFY(!charted->isVisible());
  form_->setUnfolded(true);
  QVERIFY(charted->isVisible());
  form_->setUnfolded(false);
  QVERIFY(!charted->isVisible());
}

void FormTest::aFieldThatComesIntoViewLaterHasItsPlace() {
  QVERIFY(!form_->findChild<FieldEdit*>(pathOf(path::bsa)));
  form_->setUnfolded(true);
  form_->setUnfolded(false);
  form_->setUnfolded(true);
  QStringList made;
  for (const FormGroup* group : form_->findChildren<FormGroup*>())
    for (const FieldEdit* field : group->fields()) made << field->path();
  QStringList wanted;
  for (const FieldSpec& spec : fieldTable()) wanted << pathOf(spec.path);
  QCOMPARE(made, wanted);
}

void FormTest::aFoldedFieldThatHoldsSomethingIsInView() {
  editor_->open({{"reference.max_per_day", "2 g"}});
  QVERIFY(form_->field(pathOf(path::maxPerDay))->isVisible());
}

void FormTest::powderAsksForItsMixing() {
  QVERIFY(!form_->field(pathOf(path::diluent))->isVisible());
  go(path::stockKind);
  type("p");
  enter();
  QVERIFY(form_->field(pathOf(path::diluent))->isVisible());
}

void FormTest::householdShowsTwoBoxes() {
  QVERIFY(!box<QLineEdit>("child.weight:second")->isVisible());
  editor_->offer(UnitSystem::household);
  QVERIFY(box<QLineEdit>("child.weight:second")->isVisible());
}

void FormTest::undoKeyGoesToTheFormsHistory() {
  type("103 cm");
  QKeyEvent undo(QEvent::ShortcutOverride, Qt::Key_Z, Qt::ControlModifier);
  undo.ignore();
  QApplication::sendEvent(at(), &undo);
  QVERIFY(!undo.isAccepted());
}

void FormTest::nothingIsChosenBeforehand() {
  form_->setUnfolded(true);
  for (const ChoiceBox* choice : form_->findChildren<ChoiceBox*>())
    QVERIFY2(!choice->isChosen(), qPrintable(choice->objectName()));
  for (const QCheckBox* flag : form_->findChildren<QCheckBox*>()) QVERIFY(!flag->isChecked());
  for (const QLineEdit* text : form_->findChildren<QLineEdit*>())
    QVERIFY(text->text().isEmpty() && text->placeholderText().isEmpty());
}

WARDCHALK_QT_TEST(FormTest)

}  // namespace wardchalk::ui::form_test

#include "form_test.moc"
