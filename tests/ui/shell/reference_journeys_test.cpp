#include <QApplication>
#include <QCheckBox>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTableWidget>
#include <QTest>
#include <QToolButton>

#include "core/medicine/paths.h"
#include "core/record/reference_choice.h"
#include "core/record/text_file.h"
#include "tests/ui/shell/dialog_pictures.h"
#include "tests/ui/shell/dialog_sweep.h"
#include "tests/ui/shell/nurse.h"
#include "tests/ui/support/qt_class.h"
#include "ui/form/form.h"
#include "ui/record/import_report.h"
#include "ui/record/reference_picker.h"

namespace wardchalk::ui::reference_journeys_test {

namespace {

QString demo(const char* name) {
  return QStringLiteral(WARDCHALK_SOURCE_DIR "/resources/demo/") + QLatin1String(name);
}

}  // namespace

/// A nurse takes the reference from the ward's own list, with the keyboard.
class ReferenceJourneysTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void init();
  void cleanup();

  void theBandOfTheAgeIsTakenAndSaid();
  void nothingButTheReferenceIsTouched();
  void whatTheLastReferenceSaidIsGone();
  void oneUndoTakesItBack();
  void everyEntryFillsTheFormAsItStands();
  void noneAndSeveralAreSaidAndNotFilled();
  void anAgeThatIsWantingIsAskedFor();
  void pastItsReviewItAsks();
  void anotherMedicineTakesATick();
  void nothingIsChosenBeforeAnythingIsSaid();
  void theOrderedRouteComesFirst();
  void limitsAreShownAndTheFittingBandIsMarked();
  void aNarrowListCutsNoFigure();
  void searchingWalksWithoutLeavingTheField();
  void theFormHasAWayToTheList();
  void aTableWithBadRowsIsReportedBeforeItIsKept();
  void aTableIsNotLostToItsList();
  void aTableThatIsDeclinedLeavesNothing();
  void damagedFilesAreToldAndKeepNothing();
  void theListIsRememberedAndReadAnew();
  void aListThatCannotBeReadIsForgotten();
  void dialogsAreReachedAndNamed();
  void shoots();

 private:
  [[nodiscard]] ReferencePicker* picker() { return nurse_->window().findChild<ReferencePicker*>(); }
  template <typename T>
  [[nodiscard]] T* part(const char* name) {
    return picker()->findChild<T*>(QLatin1String(name));
  }
  [[nodiscard]] bool choose();
  [[nodiscard]] bool openDemo(const QString& age, const QString& medicine);
  [[nodiscard]] bool closes(Qt::Key key);
  [[nodiscard]] std::string entry(std::string_view path) {
    return nurse_->window().editor().draft().text(path);
  }

  std::unique_ptr<Nurse> nurse_;
};

void ReferenceJourneysTest::init() { nurse_ = std::make_unique<Nurse>(); }
void ReferenceJourneysTest::cleanup() { nurse_.reset(); }

bool ReferenceJourneysTest::choose() {
  if (!nurse_->goBack()) return false;
  QTest::keyClick(&nurse_->window(), Qt::Key_R, Qt::ControlModifier);
  return picker() && hasKeyboard(picker());
}

/// Whether this key closes the picker.
bool ReferenceJourneysTest::closes(Qt::Key key) {
  nurse_->press(key);
  return QTest::qWaitFor([this] { return !picker(); });
}

bool ReferenceJourneysTest::openDemo(const QString& age, const QString& medicine) {
  nurse_->fill({QStringLiteral("103 cm"), QStringLiteral("17.2 kg"), age, medicine, QStringLiteral("oral")});
  nurse_->dialogs().chosen << QStringList{demo("reference_list.json")};
  if (!choose()) return false;
  part<QPushButton>("open-list")->click();
  return true;
}

void ReferenceJourneysTest::theBandOfTheAgeIsTakenAndSaid() {
  QVERIFY(openDemo(QStringLiteral("4 year"), QStringLiteral("Plover")));
  QCOMPARE(picker()->said(),
           QStringLiteral("Plover, oral: the entry for 2 years and over, under 12 years covers this child (4 "
                          "years)."));
  QCOMPARE(part<QLabel>("said")->accessibleName(), picker()->said());
  QCOMPARE(part<QTableWidget>("bands")->rowCount(), 3);
  QVERIFY(closes(Qt::Key_Return));
  QCOMPARE(entry(path::high), std::string("120 mg/m2/dose"));
  QCOMPARE(entry(path::low), std::string("80 mg/m2/dose"));
  QCOMPARE(entry(path::ageBelow), std::string("12 year"));
  QCOMPARE(entry(path::referenceRoute), std::string("oral"));
  QVERIFY(entry(path::source).starts_with("Plover, oral: Invented ward list, 3rd edition, 2026-01-15, p. 4"));
  QCOMPARE(nurse_->sheet().check(CheckId::ageBand).status, CheckStatus::within);
}

void ReferenceJourneysTest::nothingButTheReferenceIsTouched() {
  QVERIFY(openDemo(QStringLiteral("4 year"), QStringLiteral("Plover")));
  const auto others = [this] {
    std::vector<WrittenEntry> some;
    for (const WrittenEntry& one : nurse_->window().editor().draft().entries())
      if (!one.path.starts_with("reference.")) some.push_back(one);
    return some;
  };
  const auto before = others();
  QCOMPARE(before.size(), std::size_t{5});
  QVERIFY(closes(Qt::Key_Return));
  QVERIFY(others() == before);
}

void ReferenceJourneysTest::whatTheLastReferenceSaidIsGone() {
  CaseEditor& editor = nurse_->window().editor();
  editor.edit(QStringLiteral("reference.max_per_dose"), QStringLiteral("5 mg"));
  editor.edit(QStringLiteral("reference.max_infusion_rate"), QStringLiteral("1 mg/min"));
  editor.finishAll();
  QVERIFY(openDemo(QStringLiteral("4 year"), QStringLiteral("Plover")));
  QVERIFY(closes(Qt::Key_Return));
  QCOMPARE(entry(path::maxPerDose), std::string());
  QCOMPARE(entry(path::maxInfusionRate), std::string());
  QCOMPARE(entry(path::maxPerDay), std::string("300 mg"));
}

void ReferenceJourneysTest::oneUndoTakesItBack() {
  CaseEditor& editor = nurse_->window().editor();
  editor.edit(QStringLiteral("reference.high"), QStringLiteral("99 mg/kg/dose"));
  editor.finishAll();
  QVERIFY(openDemo(QStringLiteral("4 year"), QStringLiteral("Plover")));
  QVERIFY(closes(Qt::Key_Return));
  const std::vector<WrittenEntry> filled = editor.draft().entries();
  editor.undoStack().undo();
  QCOMPARE(entry(path::high), std::string("99 mg/kg/dose"));
  QCOMPARE(entry(path::source), std::string());
  QCOMPARE(entry(path::medicine), std::string("Plover"));
  editor.undoStack().redo();
  QVERIFY(editor.draft().entries() == filled);
}

void ReferenceJourneysTest::everyEntryFillsTheFormAsItStands() {
  const auto text = readTextFile(demo("reference_list.json").toStdString());
  const Result<ReferenceList> list = readReferenceList(*text);
  QVERIFY(list);
  CaseEditor editor;
  for (const ListEntry& one : list->entries) {
    editor.fill(QStringLiteral("x"), "reference.", entriesOf(one, {2026, 11, 25}));
    QVERIFY2(!editor.draft().pendingPath(), std::string(editor.draft().pendingPath().value_or("")).c_str());
    Reference reference = editor.draft().toCase().reference;
    QVERIFY(!reference.source.empty());
    reference.source.clear();
    QVERIFY2(reference == one.reference, one.medicine.c_str());
  }
}

void ReferenceJourneysTest::noneAndSeveralAreSaidAndNotFilled() {
  QVERIFY(openDemo(QStringLiteral("7 year"), QStringLiteral("Grebe")));
  QVERIFY2(picker()->said().startsWith(QStringLiteral("2 entries cover this child")),
           qPrintable(picker()->said()));
  QVERIFY(!part<QPushButton>("take")->isEnabled());
  picker()->search(QStringLiteral("Siskin intramuscular"));
  QVERIFY(picker()->said().startsWith(QStringLiteral("Nothing in the list")));
  nurse_->enter();
  QVERIFY(picker() && picker()->isVisible());
  QVERIFY(closes(Qt::Key_Escape));
  nurse_->window().editor().edit(QStringLiteral("child.age"), QStringLiteral("3 week"));
  QVERIFY(choose());
  picker()->search(QStringLiteral("plover oral"));
  QVERIFY2(picker()->said().startsWith(QStringLiteral("No entry covers this child (3 weeks)")),
           qPrintable(picker()->said()));
  QVERIFY(!part<QPushButton>("take")->isEnabled());
  QCOMPARE(entry(path::high), std::string());
}

void ReferenceJourneysTest::anAgeThatIsWantingIsAskedFor() {
  nurse_->dialogs().chosen << QStringList{demo("reference_list.json")};
  QVERIFY(choose());
  part<QPushButton>("open-list")->click();
  picker()->search(QStringLiteral("plover oral"));
  QCOMPARE(picker()->said(),
           QStringLiteral(
               "Which entry covers this child cannot be told yet: enter the age. Nothing is filled in."));
  QVERIFY(!part<QPushButton>("take")->isEnabled());
}

void ReferenceJourneysTest::pastItsReviewItAsks() {
  QVERIFY(openDemo(QStringLiteral("4 year"), QStringLiteral("Goldcrest")));
  auto* useIt = part<QCheckBox>("use-it");
  QVERIFY(useIt->isVisible() && !useIt->isChecked());
  QVERIFY(part<QLabel>("past-review")->text().contains(QStringLiteral("2026-06-30")));
  nurse_->enter();
  QVERIFY(picker() && picker()->isVisible());  // the question comes first
  picker()->search(QStringLiteral("Plover"));
  QVERIFY(!useIt->isVisible());
  picker()->search(QStringLiteral("Goldcrest"));
  QVERIFY(!useIt->isChecked());
  QTest::keyClick(useIt, Qt::Key_Space);
  part<QPushButton>("take")->click();
  QVERIFY(entry(path::source).ends_with("past its review date (2026-06-30) when it was taken"));
}

/// Enter on another medicine's name fills nothing before that was said and ticked.
void ReferenceJourneysTest::anotherMedicineTakesATick() {
  QVERIFY(openDemo(QStringLiteral("4 year"), QStringLiteral("Plover")));
  picker()->search(QStringLiteral("wren"));
  auto* useOther = part<QCheckBox>("use-other");
  QVERIFY(useOther->isVisible() && !useOther->isChecked());
  QCOMPARE(useOther->text(),
           QStringLiteral("The order says Plover; this entry is for Wren. Use it all the same"));
  nurse_->enter();
  QVERIFY(picker() && picker()->isVisible());
  QCOMPARE(entry(path::high), std::string());
  QTest::keyClick(useOther, Qt::Key_Space);
  part<QPushButton>("take")->click();
  QVERIFY(entry(path::source).starts_with("Wren, oral: "));
}

void ReferenceJourneysTest::nothingIsChosenBeforeAnythingIsSaid() {
  nurse_->fill({QStringLiteral("103 cm"), QStringLiteral("17.2 kg"), QStringLiteral("4 year")});
  nurse_->dialogs().chosen << QStringList{demo("reference_list.json")};
  QVERIFY(choose());
  part<QPushButton>("open-list")->click();
  QVERIFY(part<QListWidget>("found")->count() > 0);
  QCOMPARE(part<QListWidget>("found")->currentRow(), -1);
  QVERIFY(!part<QPushButton>("take")->isEnabled());
  QCOMPARE(part<QTableWidget>("bands")->rowCount(), 0);
}

void ReferenceJourneysTest::theOrderedRouteComesFirst() {
  nurse_->fill({QStringLiteral("103 cm"), QStringLiteral("17.2 kg"), QStringLiteral("4 year"),
                QStringLiteral("Plover"), QStringLiteral("intravenous")});
  nurse_->dialogs().chosen << QStringList{demo("reference_list.json")};
  QVERIFY(choose());
  part<QPushButton>("open-list")->click();
  QVERIFY2(picker()->said().startsWith(QStringLiteral("Plover, intravenous: ")),
           qPrintable(picker()->said()));
}

void ReferenceJourneysTest::limitsAreShownAndTheFittingBandIsMarked() {
  QVERIFY(openDemo(QStringLiteral("4 year"), QStringLiteral("Plover")));
  auto* bands = part<QTableWidget>("bands");
  const auto cell = [&](int row, int column) {
    return bands->item(row, column)->text().replace(QChar::Nbsp, u' ');
  };
  QVERIFY(bands->selectedItems().isEmpty());
  QCOMPARE(cell(1, 4), QStringLiteral("300 mg per day"));
  QVERIFY2(cell(1, 1).startsWith(QStringLiteral("✓ covers this child")), qPrintable(cell(1, 1)));
  QVERIFY(bands->item(1, 0)->font().bold() && !bands->item(0, 0)->font().bold());
  QVERIFY(!cell(1, 5).contains(u'('));
  picker()->search(QStringLiteral("plover intravenous"));
  QVERIFY2(cell(1, 0).startsWith(QStringLiteral("Infusion: ")), qPrintable(cell(1, 0)));
  QCOMPARE(bands->columnSpan(1, 0), bands->columnCount());
}

/// Nine columns of a narrow window would show "120 …" where the list says 120 mg/m².
void ReferenceJourneysTest::aNarrowListCutsNoFigure() {
  QVERIFY(openDemo(QStringLiteral("4 year"), QStringLiteral("Plover")));
  auto* bands = part<QTableWidget>("bands");
  const int usual = picker()->width();
  picker()->resize(800, 600);
  QTRY_VERIFY(bands->isColumnHidden(1));
  const QString whole = bands->item(1, 0)->text().replace(QChar::Nbsp, u' ');
  for (const char* line : {"This child: ✓ covers this child", "\nMaximum: 300 mg per day", "\nUp to: 120 mg"})
    QVERIFY2(whole.contains(QString::fromUtf8(line)), qPrintable(whole));
  QVERIFY(part<QPushButton>("take")->isEnabled());
  QTRY_COMPARE(bands->columnWidth(0), bands->viewport()->width());
  picker()->resize(usual, 660);
  QTRY_VERIFY(!bands->isColumnHidden(1));
  QCOMPARE(bands->item(1, 4)->text().replace(QChar::Nbsp, u' '), QStringLiteral("300 mg per day"));
}

void ReferenceJourneysTest::searchingWalksWithoutLeavingTheField() {
  QVERIFY(openDemo(QStringLiteral("4 year"), QStringLiteral("Plover")));
  auto* search = part<QLineEdit>("find");
  search->setFocus();
  search->clear();
  QTest::keyClicks(search, QStringLiteral("plov"));
  auto* found = part<QListWidget>("found");
  QCOMPARE(found->count(), 2);
  QTest::keyClick(search, Qt::Key_Down);
  QCOMPARE(found->currentItem()->text(), QStringLiteral("Plover · fever of the marsh · intravenous"));
  QTest::keyClick(search, Qt::Key_Down);  // the end
  QCOMPARE(found->currentRow(), 1);
  QVERIFY(search->hasFocus());
  QTest::keyClick(search, Qt::Key_Return);
  QTRY_VERIFY(!picker());
  QCOMPARE(entry(path::minInfusionTime), std::string("30 min"));
}

void ReferenceJourneysTest::theFormHasAWayToTheList() {
  auto* button = nurse_->window().findChild<Form*>()->findChild<QToolButton*>(QStringLiteral("from-list"));
  QVERIFY(button && button->isVisible());
  for (int steps = 0; steps < 200 && QApplication::focusWidget() != button; ++steps)
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
  QCOMPARE(QApplication::focusWidget(), button);
  QTest::keyClick(button, Qt::Key_Space);
  QVERIFY(picker() && picker()->isVisible());
  QCOMPARE(picker()->said(), QStringLiteral("Open the ward's list, or make one from a table."));
}

void ReferenceJourneysTest::aTableWithBadRowsIsReportedBeforeItIsKept() {
  const QString table = nurse_->folder() + QStringLiteral("/list.csv");
  const QString kept = nurse_->folder() + QStringLiteral("/kept.json");
  QFile file(demo("reference_list.csv"));
  QVERIFY(file.open(QIODevice::ReadOnly));
  QList<QByteArray> lines = file.readAll().split('\n');
  lines[3].replace("2028-02-01", "2028-02-31");
  lines[5].replace("10 mg/kg/day", "\"10,5 mg/kg/day\"");
  lines[7] = "a,b";
  QFile out(table);
  QVERIFY(out.open(QIODevice::WriteOnly));
  out.write(lines.join('\n'));
  out.close();
  QVERIFY(choose());
  nurse_->dialogs().chosen << QStringList{table} << QStringList{kept};
  part<QPushButton>("import-list")->click();
  auto* report = picker()->findChild<ImportReport*>();
  QVERIFY(report);
  auto* refused = report->findChild<QTableWidget*>(QStringLiteral("refused"));
  QCOMPARE(refused->rowCount(), 3);
  QCOMPARE(refused->item(0, 1)->text(), QStringLiteral("Plover, oral"));
  const char* expected[3][2] = {{"4", "review_by"}, {"6", "low"}, {"8", ""}};
  for (int row = 0; row < 3; ++row) {
    QCOMPARE(refused->item(row, 0)->text(), QString::fromLatin1(expected[row][0]));
    QCOMPARE(refused->item(row, 2)->text(), QString::fromLatin1(expected[row][1]));
    QVERIFY(!refused->item(row, 3)->text().isEmpty());
  }
  QVERIFY(!QFile::exists(kept));  // nothing before the report was seen
  QCOMPARE(part<QListWidget>("found")->count(), 0);
  report->findChild<QPushButton*>(QStringLiteral("keep"))->click();
  const auto text = readTextFile(kept.toStdString());
  QVERIFY(text);
  QCOMPARE(readReferenceList(*text)->entries.size(), std::size_t{15});
  QVERIFY(part<QListWidget>("found")->count() > 0);
}

void ReferenceJourneysTest::aTableIsNotLostToItsList() {
  const QString table = nurse_->folder() + QStringLiteral("/table.csv");
  QVERIFY(QFile::copy(demo("reference_list.csv"), table));
  QVERIFY(choose());
  nurse_->dialogs().chosen << QStringList{table} << QStringList{table};
  part<QPushButton>("import-list")->click();
  picker()->findChild<ImportReport*>()->findChild<QPushButton*>(QStringLiteral("keep"))->click();
  QVERIFY2(nurse_->dialogs().told.value(0).contains(QStringLiteral("is the file that was read")),
           qPrintable(nurse_->dialogs().told.value(0)));
  const auto now = readTextFile(table.toStdString());
  const auto before = readTextFile(demo("reference_list.csv").toStdString());
  QVERIFY(now && before && *now == *before);
}

void ReferenceJourneysTest::aTableThatIsDeclinedLeavesNothing() {
  QVERIFY(choose());
  nurse_->dialogs().chosen << QStringList{demo("reference_list.csv")};
  part<QPushButton>("import-list")->click();
  auto* report = picker()->findChild<ImportReport*>();
  QVERIFY(!report->findChild<QTableWidget*>());
  QCOMPARE(report->findChild<QPushButton*>(QStringLiteral("keep"))->text(),
           QStringLiteral("&Save the list of 18 entries …"));
  const auto* lines = report->findChild<QListWidget*>(QStringLiteral("list-review"));
  QVERIFY(lines && lines->count() > 0);
  QVERIFY(!lines->findItems(QStringLiteral("the review date is past"), Qt::MatchContains).isEmpty());
  QCOMPARE(faultsOf(*report).join(QStringLiteral("; ")), QString());
  report->findChild<QPushButton*>(QStringLiteral("leave"))->click();
  QCOMPARE(part<QListWidget>("found")->count(), 0);
  QCOMPARE(nurse_->dialogs().questions.size(), 1);  // nobody was asked where to save
}

void ReferenceJourneysTest::damagedFilesAreToldAndKeepNothing() {
  const QString damaged = nurse_->folder() + QStringLiteral("/damaged.json");
  QFile out(damaged);
  QVERIFY(out.open(QIODevice::WriteOnly));
  out.write("{\"format\":\"wardchalk.reference-list\",\"version\":1,\"entries\":[{}]}");
  out.close();
  QVERIFY(choose());
  nurse_->dialogs().chosen << QStringList{damaged}
                           << QStringList{nurse_->folder() + QStringLiteral("/absent.csv")};
  part<QPushButton>("open-list")->click();
  QVERIFY(nurse_->dialogs().told.last().contains(
      QStringLiteral("entries[0].medicine: The key medicine is missing.")));
  part<QPushButton>("import-list")->click();
  QCOMPARE(nurse_->dialogs().told.size(), 2);
  QCOMPARE(part<QListWidget>("found")->count(), 0);
}

void ReferenceJourneysTest::theListIsRememberedAndReadAnew() {
  QVERIFY(openDemo(QStringLiteral("4 year"), QStringLiteral("Plover")));
  QVERIFY(closes(Qt::Key_Escape));
  QVERIFY(choose());
  QVERIFY(part<QLabel>("list-file")->text().contains(QStringLiteral("reference_list.json")));
  QCOMPARE(part<QListWidget>("found")->count(), 2);
  const QByteArray settings = nurse_->settingsLeft();
  QVERIFY(settings.contains("reference_list.json"));
  QVERIFY(!settings.contains("Plover"));
}

/// A remembered list that is gone is told once. One that fails when it is chosen leaves the remembered one.
void ReferenceJourneysTest::aListThatCannotBeReadIsForgotten() {
  const QString file = nurse_->folder() + QStringLiteral("/list.json");
  QVERIFY(QFile::copy(demo("reference_list.json"), file));
  nurse_->dialogs().chosen << QStringList{file} << QStringList{nurse_->folder() + QStringLiteral("/no.json")};
  QVERIFY(choose());
  part<QPushButton>("open-list")->click();
  part<QPushButton>("open-list")->click();
  QCOMPARE(nurse_->dialogs().told.size(), 1);
  QCOMPARE(Settings(nurse_->settingsFile()).referenceList(), file);
  QVERIFY(closes(Qt::Key_Escape));
  QVERIFY(QFile::remove(file));
  QVERIFY(choose());
  QCOMPARE(nurse_->dialogs().told.size(), 2);
  QVERIFY(nurse_->dialogs().told.last().contains(file));
  QVERIFY(Settings(nurse_->settingsFile()).referenceList().isEmpty());
  QVERIFY(closes(Qt::Key_Escape));
  QVERIFY(choose());
  QCOMPARE(nurse_->dialogs().told.size(), 2);
}

void ReferenceJourneysTest::dialogsAreReachedAndNamed() {
  QVERIFY(openDemo(QStringLiteral("4 year"), QStringLiteral("Goldcrest")));
  QCOMPARE(faultsOf(*picker()).join(QStringLiteral("; ")), QString());
}

void ReferenceJourneysTest::shoots() {
  const auto shoot = [this](const char* name, const char* part) {
    return shootDialog(QLatin1String(name), [this, part] {
      nurse_ = std::make_unique<Nurse>();
      const bool open = openDemo(QStringLiteral("4 year"), QString::fromUtf8(part));
      return open ? static_cast<QWidget*>(picker()) : nullptr;
    });
  };
  if (!shoot("reference-taken", "Plover")) QSKIP("no folder for pictures is named");
  shoot("reference-past-review", "Goldcrest");
  shoot("reference-window", "Wren");
  shoot("reference-other", "Plover intravenous");
  shootDialog(QStringLiteral("import-report"), [this] {
    nurse_ = std::make_unique<Nurse>();
    nurse_->dialogs().chosen << QStringList{demo("reference_list.csv")};
    if (!choose()) return static_cast<QWidget*>(nullptr);
    part<QPushButton>("import-list")->click();
    return static_cast<QWidget*>(picker()->findChild<ImportReport*>());
  });
}

WARDCHALK_QT_TEST(ReferenceJourneysTest)

}  // namespace wardchalk::ui::reference_journeys_test

#include "reference_journeys_test.moc"
