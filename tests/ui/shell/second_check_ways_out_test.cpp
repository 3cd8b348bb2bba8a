#include <QAbstractButton>
#include <QAction>
#include <QClipboard>
#include <QFile>
#include <QGuiApplication>
#include <QLabel>
#include <QTableWidget>
#include <QTest>
#include <algorithm>
#include <functional>

#include "tests/ui/paper/pdf_text.h"
#include "tests/ui/shell/everything_said.h"
#include "tests/ui/shell/nurse.h"
#include "tests/ui/shell/usual_case.h"
#include "tests/ui/support/qt_class.h"
#include "ui/form/form.h"
#include "ui/shell/cover_page.h"
#include "ui/shell/idle_watch.h"
#include "ui/shell/notice_bar.h"

Q_DECLARE_METATYPE(std::function<void()>)

namespace wardchalk::ui::second_check_ways_out_test {

using test::everythingSaid;
using test::firstFound;
using test::pagesOfPdf;
using test::unspaced;
using test::usualCase;
using test::weightPlace;

/// Two people have looked at a difference, and leave it every way that there is (H49).
class SecondCheckWaysOutTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void init();
  void cleanup() { nurse_.reset(); }

  void noWayLeavesAGreenFlag_data();
  void noWayLeavesAGreenFlag();
  void comparingGoesOnUntilItIsLeft_data();
  void comparingGoesOnUntilItIsLeft();
  void thatItIsRecordedIsSaidBefore();
  void changingWhatDifferedShowsTheAmountAndSaysThatItWasNotRepeated();
  void takingThatBackWithholdsTheAmountAgain();
  void anAgreementThatIsRecordedEndsIt();
  void anotherChildsCaseEndsIt();
  void aNewChildEndsIt();
  void whatNoFileKeepsIsNotLeftUnasked_data();
  void whatNoFileKeepsIsNotLeftUnasked();
  void whatIsSettledIsLeftUnasked();
  void theNextSecondPersonIsToldNothingOfIt();

 private:
  using Way = std::function<void()>;

  /// The usual case, saved, and looked at beside one with another weight.
  void lookAtADifference();
  void fillAgain(const QString& weight);
  void retype(const char* path, const QString& text) {
    nurse_->window().findChild<Form*>()->focusField(QLatin1String(path));
    nurse_->fill({text});
  }
  void push(const char* button) {
    const auto all = nurse_->window().findChildren<QAbstractButton*>(QLatin1String(button));
    const auto seen = std::find_if(all.begin(), all.end(), [](const auto* one) { return one->isVisible(); });
    QVERIFY2(seen != all.end(), button);  // a comparison that was left may not have gone yet
    QAbstractButton* one = *seen;
    one->setFocus(Qt::TabFocusReason);
    QTest::keyClick(one, Qt::Key_Space);
  }
  void begin() { nurse_->press(Qt::Key_F9); }
  void compare() { nurse_->press(Qt::Key_F9, Qt::ControlModifier); }
  void leave() { nurse_->press(Qt::Key_F9, Qt::ShiftModifier); }
  void record() {
    push("second-alone");
    push("second-finish");
  }
  void coverAndUncover() {
    now_ += std::chrono::minutes(5);
    nurse_->window().findChild<IdleWatch*>()->look();
    QVERIFY(nurse_->window().findChild<CoverPage*>()->isVisible());
    push("cover-show");
    push("cover-go-on");
  }
  [[nodiscard]] QString file() const { return nurse_->folder() + QStringLiteral("/case.json"); }
  [[nodiscard]] bool isComparing() {
    auto* table = nurse_->window().findChild<QTableWidget*>(QStringLiteral("second-table"));
    return table && table->isVisible();
  }
  [[nodiscard]] QString bar() {
    return nurse_->window().findChild<QLabel*>(QStringLiteral("second-words"))->text();
  }
  [[nodiscard]] QString notice(const char* name) {
    return nurse_->window().findChild<NoticeBar*>(QLatin1String(name))->said();
  }
  [[nodiscard]] QAction* action(const char* name) {
    return nurse_->window().findChild<QAction*>(QLatin1String(name));
  }
  [[nodiscard]] QString printedSheet() {
    nurse_->dialogs().pdf = nurse_->folder() + QStringLiteral("/sheet.pdf");
    action("sheet-pdf")->trigger();
    return unspaced(pagesOfPdf(nurse_->dialogs().pdf).join(QString()));
  }
  void isWithheld();

  std::chrono::milliseconds now_{1'000'000};
  std::unique_ptr<Nurse> nurse_;
};

void SecondCheckWaysOutTest::init() {
  QGuiApplication::clipboard()->clear();
  nurse_ = std::make_unique<Nurse>();
  nurse_->window().resize(1366, 768);
  nurse_->window().findChild<IdleWatch*>()->setClock([this] { return ClockReading{now_, now_}; });
  nurse_->dialogs().goingOn = true;
  lookAtADifference();
}

void SecondCheckWaysOutTest::fillAgain(const QString& weight) {
  QStringList again = usualCase();
  again[weightPlace] = weight;
  nurse_->window().findChild<Form*>()->focusField(QStringLiteral("child.height"));
  nurse_->fill(again);
}

void SecondCheckWaysOutTest::lookAtADifference() {
  nurse_->fill(usualCase());
  nurse_->dialogs().save = file();
  nurse_->press(Qt::Key_S, Qt::ControlModifier);
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::safe);
  begin();
  fillAgain(QStringLiteral("12.7 kg"));
  compare();
  QVERIFY(isComparing());
}

/// Flag, amount, working, board, copies and sheet: none of them lets anybody prepare it.
void SecondCheckWaysOutTest::isWithheld() {
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::ask);
  QCOMPARE(nurse_->sheet().because(), std::string_view("second-differs"));
  QVERIFY(!nurse_->sheet().give);
  const QStringList green{QStringLiteral("3.2 mL"), QStringLiteral("SAFE")};
  QCOMPARE(firstFound(everythingSaid(), green), QString());
  QVERIFY2(bar().contains(QStringLiteral("DIFFERS")), qPrintable(bar()));
  const QString sheet = printedSheet();
  QVERIFY(sheet.contains(QStringLiteral("Secondcheck:DIFFERS.First:weightinkg17.2kg.Second:12.7kg.")));
  QVERIFY(!sheet.contains(QStringLiteral("3.2mL")) && !sheet.contains(QStringLiteral("SAFE")));
}

void SecondCheckWaysOutTest::noWayLeavesAGreenFlag_data() {
  QTest::addColumn<Way>("way");
  const auto row = [](const char* name, Way way) { QTest::newRow(name) << std::move(way); };
  row("recorded", [this] { record(); });
  row("the button of the comparison", [this] { push("second-leave"); });
  row("the key", [this] { leave(); });
  row("from the first entries", [this] {
    push("second-correct-first");
    leave();
  });
  row("from the second entries", [this] {
    push("second-correct-second");
    leave();
  });
  row("the button of the notice", [this] {
    push("second-correct-second");
    push("second-leave-button");
  });
  row("corrected and not compared", [this] {
    push("second-correct-second");
    retype("child.weight", QStringLiteral("17.2 kg"));
    leave();
  });
  row("corrected, alike and not recorded", [this] {
    push("second-correct-second");
    retype("child.weight", QStringLiteral("17.2 kg"));
    compare();
    push("second-leave");
  });
  row("undo", [this] {
    leave();
    for (int i = 0; i < 20; ++i) nurse_->press(Qt::Key_Z, Qt::ControlModifier);
  });
  row("another entry changed", [this] {
    leave();
    retype("order.medicine", QStringLiteral("Dunlin"));
  });
  row("the same weight in grams", [this] {
    leave();
    retype("child.weight", QStringLiteral("17200 g"));
    retype("child.weight", QStringLiteral("17.2 kg"));
  });
  row("other house rules", [this] {
    leave();
    nurse_->rules().use(RulesKind::classroom);
  });
  row("begun again and left", [this] {
    leave();
    begin();
    leave();
  });
  row("begun again and compared alike, not recorded", [this] {
    leave();
    begin();
    fillAgain(QStringLiteral("17.2 kg"));
    compare();
    push("second-leave");
  });
  row("covered while comparing", [this] {
    coverAndUncover();
    leave();
  });
  row("covered after it", [this] {
    leave();
    coverAndUncover();
  });
  row("the same file opened again", [this] {
    leave();
    QVERIFY(nurse_->window().openFile(file()));
  });
  row("the same entries opened as a row", [this] {
    leave();
    QVERIFY(nurse_->window().openRow(nurse_->window().editor().draft().entries()));
  });
  row("the worked example opened, and the same file again", [this] {
    leave();
    action("example")->trigger();
    QVERIFY(nurse_->window().openFile(file()));
  });
  row("another entry saved and opened again", [this] {
    leave();
    retype("order.medicine", QStringLiteral("Dunlin"));
    nurse_->press(Qt::Key_S, Qt::ControlModifier);
    QVERIFY(nurse_->window().openFile(file()));
  });
  row("the window closed with saving, and shown again", [this] {
    push("second-correct-first");  // what is not saved yet is asked about
    retype("order.medicine", QStringLiteral("Dunlin"));
    nurse_->dialogs().answer = Unsaved::save;
    QVERIFY(nurse_->window().close());
    nurse_->window().show();
    QVERIFY(nurse_->goBack());
  });
}

void SecondCheckWaysOutTest::noWayLeavesAGreenFlag() {
  QFETCH(Way, way);
  way();
  QVERIFY(!isComparing());
  isWithheld();
}

void SecondCheckWaysOutTest::comparingGoesOnUntilItIsLeft_data() {
  QTest::addColumn<Way>("way");
  const auto row = [](const char* name, Way way) { QTest::newRow(name) << std::move(way); };
  row("Escape", [this] { nurse_->press(Qt::Key_Escape); });
  row("another file", [this] { QVERIFY(!nurse_->window().openFile(file())); });
  row("a row", [this] { QVERIFY(!nurse_->window().openRow({{"child.weight", "20 kg"}})); });
  row("the worked example", [this] { action("example")->trigger(); });
  row("undo", [this] { nurse_->press(Qt::Key_Z, Qt::ControlModifier); });
  row("a second beginning", [this] { begin(); });
  row("a cover", [this] { coverAndUncover(); });
  row("a new child that is not confirmed", [this] {
    nurse_->dialogs().answer = Unsaved::keep;
    nurse_->press(Qt::Key_N, Qt::ControlModifier);
  });
  row("a window that is not closed after all", [this] {
    nurse_->dialogs().answer = Unsaved::keep;
    QVERIFY(!nurse_->window().close());
  });
  row("a window that is closed and shown again", [this] {
    nurse_->dialogs().answer = Unsaved::discard;
    QVERIFY(nurse_->window().close());
    nurse_->window().show();
    QVERIFY(nurse_->goBack());
  });
}

void SecondCheckWaysOutTest::comparingGoesOnUntilItIsLeft() {
  QFETCH(Way, way);
  way();
  QVERIFY(isComparing());
  leave();
  isWithheld();
}

void SecondCheckWaysOutTest::thatItIsRecordedIsSaidBefore() {
  auto* button = nurse_->window().findChild<QAbstractButton*>(QStringLiteral("second-leave"));
  QVERIFY2(button->text().contains(QStringLiteral("is recorded")), qPrintable(button->text()));
  nurse_->dialogs().goingOn = false;
  leave();
  QVERIFY(isComparing());
  QCOMPARE(nurse_->dialogs().goOns.size(), 1);
  QVERIFY(nurse_->dialogs().goOns[0].text.contains(QStringLiteral("differ stays recorded")));
}

void SecondCheckWaysOutTest::changingWhatDifferedShowsTheAmountAndSaysThatItWasNotRepeated() {
  leave();
  retype("child.weight", QStringLiteral("17.3 kg"));
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::safe);
  QVERIFY2(bar().contains(QStringLiteral("an earlier second check differed; not repeated")),
           qPrintable(bar()));
  QVERIFY(notice("second-voided").contains(QStringLiteral("was not repeated")));
  QVERIFY(printedSheet().contains(QStringLiteral("Secondcheck:anearliersecondcheckdiffered;notrepeated(")));
}

void SecondCheckWaysOutTest::takingThatBackWithholdsTheAmountAgain() {
  leave();
  retype("child.weight", QStringLiteral("17.3 kg"));
  nurse_->press(Qt::Key_Z, Qt::ControlModifier);
  QCOMPARE(nurse_->window().editor().draft().text("child.weight"), "17.2 kg");
  isWithheld();
  QCOMPARE(notice("second-voided"), QString());
  nurse_->press(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::safe);
  QVERIFY(bar().contains(QStringLiteral("not repeated")));
}

void SecondCheckWaysOutTest::anAgreementThatIsRecordedEndsIt() {
  leave();
  begin();
  fillAgain(QStringLiteral("17.2 kg"));
  compare();
  record();
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::safe);
  QVERIFY2(bar().contains(QStringLiteral("done independently, same result")), qPrintable(bar()));
}

void SecondCheckWaysOutTest::anotherChildsCaseEndsIt() {
  leave();
  std::vector<WrittenEntry> other = nurse_->window().editor().draft().entries();
  for (WrittenEntry& entry : other)
    if (entry.path == "child.weight") entry.text = "16.8 kg";
  QVERIFY(nurse_->window().openRow(other));
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::safe);
  QVERIFY2(bar().contains(QStringLiteral("not done")), qPrintable(bar()));
}

void SecondCheckWaysOutTest::aNewChildEndsIt() {
  leave();
  nurse_->dialogs().answer = Unsaved::discard;
  nurse_->press(Qt::Key_N, Qt::ControlModifier);
  nurse_->fill(usualCase());
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::safe);
  QVERIFY(bar().contains(QStringLiteral("not done")));
}

void SecondCheckWaysOutTest::whatNoFileKeepsIsNotLeftUnasked_data() {
  QTest::addColumn<bool>("closes");
  QTest::addColumn<bool>("repeats");
  QTest::addColumn<QString>("changedTo");
  QTest::newRow("a new child") << false << false << QString();
  QTest::newRow("the window is closed") << true << false << QString();
  QTest::newRow("a new child, while it is repeated") << false << true << QString();
  QTest::newRow("a new child, after an entry that differed was changed") << false << false << "17.3 kg";
  QTest::newRow("the window is closed, after that") << true << false << "17.3 kg";
}

/// The case is saved and its file does not keep that two people differ: a title without a star tells nothing.
void SecondCheckWaysOutTest::whatNoFileKeepsIsNotLeftUnasked() {
  QFETCH(bool, closes);
  QFETCH(bool, repeats);
  QFETCH(QString, changedTo);
  leave();
  if (!changedTo.isEmpty()) retype("child.weight", changedTo);
  if (repeats) begin();
  const bool unsaved = !changedTo.isEmpty();
  ScriptedDialogs& dialogs = nurse_->dialogs();
  dialogs.goingOn = false;
  dialogs.goOns.clear();
  const int askedBefore = dialogs.asked;
  if (closes)
    QVERIFY(!nurse_->window().close());
  else
    nurse_->press(Qt::Key_N, Qt::ControlModifier);
  if (unsaved) {
    QCOMPARE(dialogs.asked, askedBefore + 1);
    QVERIFY2(dialogs.lastAsked.contains(QStringLiteral("not settled")), qPrintable(dialogs.lastAsked));
    QVERIFY(dialogs.lastAsked.contains(QStringLiteral("not saved")));
    QVERIFY(dialogs.goOns.isEmpty());
  } else {
    QCOMPARE(dialogs.goOns.size(), 1);
    QVERIFY2(dialogs.goOns[0].text.contains(QStringLiteral("not settled")),
             qPrintable(dialogs.goOns[0].text));
    if (repeats) leave();
    QVERIFY(!nurse_->window().editor().draft().isEmpty());
    dialogs.goingOn = true;
    nurse_->press(Qt::Key_N, Qt::ControlModifier);
    QVERIFY(nurse_->window().editor().draft().isEmpty());
  }
}

void SecondCheckWaysOutTest::whatIsSettledIsLeftUnasked() {
  leave();
  begin();
  fillAgain(QStringLiteral("17.2 kg"));
  compare();
  record();
  nurse_->dialogs().goOns.clear();
  nurse_->dialogs().goingOn = false;
  nurse_->press(Qt::Key_N, Qt::ControlModifier);
  QVERIFY(nurse_->dialogs().goOns.isEmpty());
  QVERIFY(nurse_->window().editor().draft().isEmpty());
}

void SecondCheckWaysOutTest::theNextSecondPersonIsToldNothingOfIt() {
  leave();
  begin();
  QCOMPARE(firstFound(everythingSaid(), test::tellTale() << QStringLiteral("12.7")), QString());
  fillAgain(QStringLiteral("17.2 kg"));
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::safe);
  QCOMPARE(firstFound(everythingSaid(), {QStringLiteral("12.7")}), QString());
}

WARDCHALK_QT_TEST(SecondCheckWaysOutTest)

}  // namespace wardchalk::ui::second_check_ways_out_test

#include "second_check_ways_out_test.moc"
