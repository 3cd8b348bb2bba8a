#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QDir>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include "core/record/rules_file.h"
#include "core/record/text_file.h"
#include "tests/ui/paper/pdf_text.h"
#include "tests/ui/shell/nurse.h"
#include "tests/ui/shell/usual_case.h"
#include "tests/ui/support/qt_class.h"
#include "ui/form/choice_box.h"
#include "ui/record/rules_editor.h"
#include "ui/shell/case_document.h"
#include "ui/shell/notice_bar.h"

namespace wardchalk::ui::rules_desk_test {

using test::pagesOfPdf;
using test::unspaced;
using test::usualCase;

/// The house rules in the window: chosen, opened, changed, and named wherever they count.
class RulesDeskTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void init();
  void cleanup() { nurse_.reset(); }

  void theShippedSetsAreUsedAtOnce();
  void aFileIsUsedAndRemembered();
  void aFileThatCannotBeReadChangesNothing();
  void whatCannotBeReadAtStartIsToldWithoutADialog();
  void whatCannotBeReadIsForgotten_data();
  void whatCannotBeReadIsForgotten();
  void changingARuleShowsItsExample();
  void changedRulesReachWorkingAndSheet();
  void usedWithoutSavingTheyAreNotRemembered();
  void aShippedNameIsNotLentToOtherRules();
  void whatCannotBeReadIsNotUsed();
  void theSyringesAreTheWards();

 private:
  QAction* action(const char* name) { return nurse_->window().findChild<QAction*>(QLatin1String(name)); }
  QString bar() { return nurse_->window().findChild<QLabel*>(QStringLiteral("rules-name"))->text(); }
  RulesEditor* editor() {
    action("rules-edit")->trigger();
    auto* opened = nurse_->window().findChild<RulesEditor*>();
    if (!opened) qFatal("the editor does not open");
    opened->activateWindow();
    if (!QTest::qWaitFor([&] { return QApplication::activeWindow() == opened; })) qFatal("it is not active");
    return opened;
  }
  template <typename Box>
  static Box* box(RulesEditor* editor, const char* key) {
    return editor->findChild<Box*>(QStringLiteral("rule:") + QLatin1String(key));
  }
  static void choose(RulesEditor* editor, const char* key, const QString& words) {
    auto* one = box<ChoiceBox>(editor, key);
    QVERIFY2(one && one->findText(words) > 0, key);
    one->setFocus(Qt::TabFocusReason);
    while (one->currentIndex() > 1) QTest::keyClick(one, Qt::Key_Up);
    for (int i = 0; i < 12 && one->currentText() != words; ++i) QTest::keyClick(one, Qt::Key_Down);
    QCOMPARE(one->currentText(), words);
  }
  static void type(RulesEditor* editor, const char* key, const QString& text) {
    auto* one = box<QLineEdit>(editor, key);
    QVERIFY2(one, key);
    one->setFocus(Qt::TabFocusReason);
    one->selectAll();
    QTest::keyClicks(one, text);
  }
  static void push(RulesEditor* editor, const char* name) {
    auto* one = editor->findChild<QPushButton*>(QLatin1String(name));
    one->setFocus(Qt::TabFocusReason);
    QTest::keyClick(one, Qt::Key_Space);
  }
  static QString said(RulesEditor* editor, const char* key) {
    return editor->findChild<QWidget*>(QStringLiteral("rule:") + QLatin1String(key))->accessibleDescription();
  }
  QString writeFile(const QByteArray& text) {
    const QString name = nurse_->folder() + QStringLiteral("/ward.json");
    QFile file(name);
    if (!file.open(QIODevice::WriteOnly)) qFatal("no file");
    file.write(text);
    return name;
  }
  QString printedSheet() {
    nurse_->dialogs().pdf = nurse_->folder() + QStringLiteral("/sheet.pdf");
    action("sheet-pdf")->trigger();
    return unspaced(pagesOfPdf(nurse_->dialogs().pdf).join(QString()));
  }

  std::unique_ptr<Nurse> nurse_;
};

constexpr const char* wardRules =
    R"({"format": "wardchalk.house-rules", "version": 1, "name": "ward 5", "agreed_by": "pharmacy and ward",
        "agreed_on": "2026-10-01", "round_to": "decimals"})";

void RulesDeskTest::init() {
  nurse_ = std::make_unique<Nurse>();
  nurse_->window().resize(1366, 768);
}

void RulesDeskTest::theShippedSetsAreUsedAtOnce() {
  QCOMPARE(bar(), QStringLiteral("House rules: exact"));
  nurse_->rules().use(RulesKind::classroom);
  QCOMPARE(bar(), QStringLiteral("House rules: classroom"));
  nurse_->fill({QString(), QStringLiteral("37 lb")});
  QCOMPARE(nurse_->line(QStringLiteral("child.weight")), QStringLiteral("≈ 16.82 kg"));
  nurse_->rules().use(RulesKind::exact);
  QCOMPARE(nurse_->line(QStringLiteral("child.weight")), QStringLiteral("≈ 16.78 kg"));
  QCOMPARE(nurse_->sheet().rules.name, "exact");
}

void RulesDeskTest::aFileIsUsedAndRemembered() {
  nurse_->dialogs().rules = writeFile(wardRules);
  nurse_->rules().openFile();
  QCOMPARE(bar(), QStringLiteral("House rules: ward 5"));
  Settings settings(nurse_->settingsFile());
  MainWindow again(exactRules(), settings, nurse_->dialogs());
  QCOMPARE(again.findChild<QLabel*>(QStringLiteral("rules-name"))->text(),
           QStringLiteral("House rules: ward 5"));
}

void RulesDeskTest::aFileThatCannotBeReadChangesNothing() {
  nurse_->dialogs().rules =
      writeFile(R"({"format": "wardchalk.house-rules", "version": 1, "pounds": "about"})");
  nurse_->rules().openFile();
  QCOMPARE(bar(), QStringLiteral("House rules: exact"));
  QCOMPARE(nurse_->dialogs().told.size(), 1);
  QVERIFY2(nurse_->dialogs().told[0].contains(QStringLiteral("exact, trade")),
           qPrintable(nurse_->dialogs().told[0]));
}

void RulesDeskTest::whatCannotBeReadAtStartIsToldWithoutADialog() {
  const QString file = nurse_->folder() + QStringLiteral("/moved away.json");
  Settings settings(nurse_->folder() + QStringLiteral("/other.ini"));
  settings.setRules(file);
  MainWindow again(classroomRules(), settings, nurse_->dialogs());
  QCOMPARE(again.findChild<QLabel*>(QStringLiteral("rules-name"))->text(),
           QStringLiteral("House rules: exact"));
  const QString told = again.findChild<NoticeBar*>(QStringLiteral("rules-notice"))->said();
  QVERIFY2(told.contains(file) && told.contains(QStringLiteral("exact set is used")), qPrintable(told));
  QVERIFY(nurse_->dialogs().told.isEmpty());
}

void RulesDeskTest::whatCannotBeReadIsForgotten_data() {
  QTest::addColumn<QString>("kind");
  for (const char* kind : {"gone", "damaged", "empty", "huge", "a folder", "nobody may read it"})
    QTest::newRow(kind) << QString::fromLatin1(kind);
}

/// Said once, and the next start is clean.
void RulesDeskTest::whatCannotBeReadIsForgotten() {
  QFETCH(QString, kind);
  const QString file = nurse_->folder() + QStringLiteral("/ward.json");
  if (kind == QStringLiteral("damaged")) writeFile("{\"format\": \"wardchalk.house-rules\", ");
  if (kind == QStringLiteral("empty")) writeFile({});
  if (kind == QStringLiteral("huge")) writeFile(QByteArray(5 << 20, ' ') + wardRules);
  if (kind == QStringLiteral("a folder")) QVERIFY(QDir().mkpath(file));
  if (kind == QStringLiteral("nobody may read it")) {
    writeFile(wardRules);
    QVERIFY(QFile::setPermissions(file, {}));
    if (QFile again(file); again.open(QIODevice::ReadOnly)) QSKIP("this user may read everything");
  }
  Settings settings(nurse_->folder() + QStringLiteral("/other.ini"));
  settings.setRules(file);
  const auto saidAtStart = [&] {
    MainWindow again(classroomRules(), settings, nurse_->dialogs());
    return again.findChild<NoticeBar*>(QStringLiteral("rules-notice"))->said();
  };
  const QString told = saidAtStart();
  QVERIFY2(told.contains(file), qPrintable(told));
  QVERIFY(settings.rules().isEmpty());
  QCOMPARE(saidAtStart(), QString());
  QVERIFY(nurse_->dialogs().told.isEmpty());
}

void RulesDeskTest::changingARuleShowsItsExample() {
  RulesEditor* opened = editor();
  QCOMPARE(said(opened, "kilogram_decimals"), QStringLiteral("17.25 kg stays 17.25 kg."));
  choose(opened, "kilogram_decimals", QStringLiteral("to 1 decimal"));
  QCOMPARE(said(opened, "kilogram_decimals"), QStringLiteral("17.25 kg becomes 17.3 kg."));
  choose(opened, "round_to", QStringLiteral("to decimals, whatever the marks"));
  QVERIFY(said(opened, "round_to").contains(QStringLiteral("3.14 mL is measured as 3.1 mL")));
  type(opened, "ask_below_percent", QStringLiteral("80"));
  QVERIFY(said(opened, "ask_below_percent").contains(QStringLiteral("79 mg")));
  QCOMPARE(nurse_->sheet().rules, exactRules());  // nothing is in force yet
}

void RulesDeskTest::changedRulesReachWorkingAndSheet() {
  QStringList odd = usualCase();
  odd[5] = QStringLiteral("78.5 mg/dose");
  nurse_->fill(odd);
  QCOMPARE(*nurse_->sheet().give->measured, Number::ratio(32, 10));
  RulesEditor* opened = editor();
  type(opened, "name", QStringLiteral("ward 5"));
  type(opened, "agreed_by", QStringLiteral("pharmacy and ward"));
  type(opened, "agreed_on", QStringLiteral("2026-10-01"));
  choose(opened, "round_to", QStringLiteral("to decimals, whatever the marks"));
  nurse_->dialogs().rules = nurse_->folder() + QStringLiteral("/ward.json");
  push(opened, "rules-save");
  QTRY_VERIFY(!nurse_->window().findChild<RulesEditor*>());
  QCOMPARE(*nurse_->sheet().give->measured, Number::ratio(31, 10));
  const auto text = readTextFile(nativePath(nurse_->dialogs().rules));
  QVERIFY(text);
  const auto saved = readRules(*text);
  QVERIFY(saved);
  QCOMPARE(*saved, nurse_->sheet().rules);
  const QString sheet = printedSheet();
  QVERIFY(sheet.contains(QStringLiteral("Houserules:ward5")));
  QVERIFY(sheet.contains(QStringLiteral("Agreedbypharmacyandwardon2026-10-01.")));
  QVERIFY(sheet.contains(QStringLiteral("Measure3.1mL")));
}

void RulesDeskTest::usedWithoutSavingTheyAreNotRemembered() {
  RulesEditor* opened = editor();
  type(opened, "name", QStringLiteral("for today"));
  push(opened, "rules-use");
  QCOMPARE(bar(), QStringLiteral("House rules: for today"));
  QVERIFY(Settings(nurse_->settingsFile()).rules().isEmpty());
}

void RulesDeskTest::aShippedNameIsNotLentToOtherRules() {
  RulesEditor* opened = editor();
  choose(opened, "rate_decimals", QStringLiteral("whole mL"));
  QVERIFY(said(opened, "name").contains(QStringLiteral("name of their own")));
  push(opened, "rules-use");
  QCOMPARE(bar(), QStringLiteral("House rules: exact"));
  QCOMPARE(nurse_->focused(), QStringLiteral("rule:name"));
  nurse_->dialogs().rules =
      writeFile(R"({"format": "wardchalk.house-rules", "version": 1, "name": "exact", "rate_decimals": 0})");
  opened->close();
  nurse_->rules().openFile();
  QCOMPARE(bar(), QStringLiteral("House rules: exact, changed"));
}

void RulesDeskTest::whatCannotBeReadIsNotUsed() {
  RulesEditor* opened = editor();
  type(opened, "name", QStringLiteral("ward 5"));
  type(opened, "ask_below_percent", QStringLiteral("7,5"));
  QVERIFY(said(opened, "ask_below_percent").contains(QStringLiteral("comma")));
  push(opened, "rules-use");
  QCOMPARE(nurse_->focused(), QStringLiteral("rule:ask_below_percent"));
  const auto* notSaved = nurse_->window().findChild<QLabel*>(QStringLiteral("rules-not-saved"));
  QVERIFY(notSaved->isVisible());
  QVERIFY2(notSaved->text().startsWith(QStringLiteral("Not saved: ")), qPrintable(notSaved->text()));
  QVERIFY(!QApplication::focusWidget()->visibleRegion().isEmpty());  // scrolled to, wherever it stands
  QCOMPARE(nurse_->sheet().rules, exactRules());
}

void RulesDeskTest::theSyringesAreTheWards() {
  RulesEditor* opened = editor();
  type(opened, "name", QStringLiteral("ward 5"));
  auto* add = opened->findChild<QPushButton*>(QStringLiteral("syringe-add"));
  add->setFocus(Qt::TabFocusReason);
  QTest::keyClick(add, Qt::Key_Space);
  nurse_->type(QStringLiteral("4 mL"));
  push(opened, "rules-use");  // a row that is not whole is not used
  QCOMPARE(nurse_->focused(), QStringLiteral("syringe-13:kind"));
  QTest::keyClick(QApplication::focusWidget(), Qt::Key_Down);
  auto* marks = opened->findChild<QLineEdit*>(QStringLiteral("syringe-13:marks"));
  marks->setFocus(Qt::TabFocusReason);
  QTest::keyClicks(marks, QStringLiteral("0.1 mL"));
  QVERIFY2(said(opened, "round_to").contains(QStringLiteral("3.1 mL in a syringe of 4 mL")),
           qPrintable(said(opened, "round_to")));
  push(opened, "rules-use");
  const std::vector<Syringe>& all = nurse_->sheet().rules.syringes;
  QCOMPARE(all.size(), exactRules().syringes.size() + 1);
  QCOMPARE(all[2], (Syringe{Number(4), Number::ratio(1, 10), SyringeKind::oral}));
}

WARDCHALK_QT_TEST(RulesDeskTest)

}  // namespace wardchalk::ui::rules_desk_test

#include "rules_desk_test.moc"
