#include <QAction>
#include <QFile>
#include <QTest>

#include "tests/ui/shell/nurse.h"
#include "tests/ui/shell/usual_case.h"
#include "ui/form/form.h"

namespace wardchalk::ui {

/// A file that somebody else touches while it is open here.
class SavingTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void init();
  void cleanup() { nurse_.reset(); }

  void anUntouchedFileIsSavedWithoutAQuestion();
  void aChangedFileIsToldWithWhatDiffers();
  void mineMayBeKept();
  void theirsMayBeOpened();
  void mineMayGoElsewhere();
  void aDeletedFileIsToldAndMayBeWrittenAgain();
  void aDamagedFileCannotBeOpenedButWrittenOver();
  void aChangedFileIsAskedAboutWhenTheWindowCloses();
  void whyItCannotBeWrittenIsSaidPlainly();

 private:
  QString file() const { return nurse_->folder() + QStringLiteral("/case.json"); }
  void save() { nurse_->press(Qt::Key_S, Qt::ControlModifier); }
  QByteArray content(const QString& name) {
    QFile in(name);
    return in.open(QIODevice::ReadOnly) ? in.readAll() : QByteArray();
  }
  void write(const QByteArray& text) {
    QFile out(file());
    QVERIFY(out.open(QIODevice::WriteOnly));
    out.write(text);
  }
  /// Somebody weighs the child again.
  void theyChangeTheWeight() { write(content(file()).replace("17.2 kg", "17.9 kg")); }
  void iChangeTheHeight() {
    nurse_->window().findChild<Form*>()->focusField(QStringLiteral("child.height"));
    nurse_->fill({QStringLiteral("104 cm")});
  }
  std::string weight() { return nurse_->window().editor().draft().text("child.weight"); }

  std::unique_ptr<Nurse> nurse_;
};

void SavingTest::init() {
  nurse_ = std::make_unique<Nurse>();
  nurse_->fill(test::usualCase());
  nurse_->dialogs().save = file();
  save();
  QVERIFY(content(file()).contains("17.2 kg"));
}

void SavingTest::anUntouchedFileIsSavedWithoutAQuestion() {
  iChangeTheHeight();
  save();
  save();
  QVERIFY(nurse_->dialogs().overwrites.isEmpty());
  QVERIFY(content(file()).contains("104 cm"));
}

void SavingTest::aChangedFileIsToldWithWhatDiffers() {
  iChangeTheHeight();
  theyChangeTheWeight();
  const QByteArray theirs = content(file());
  save();
  QCOMPARE(nurse_->dialogs().overwrites.size(), 1);
  const QString& asked = nurse_->dialogs().overwrites[0];
  QVERIFY2(asked.contains(QStringLiteral("Weight: 17.2 kg here, 17.9 kg in the file")), qPrintable(asked));
  QVERIFY2(asked.contains(QStringLiteral("Height: 104 cm here, 103 cm in the file")), qPrintable(asked));
  QCOMPARE(content(file()), theirs);
  QVERIFY(nurse_->window().isWindowModified());
}

void SavingTest::mineMayBeKept() {
  theyChangeTheWeight();
  nurse_->dialogs().overwriting = Overwrite::keepMine;
  save();
  QVERIFY(content(file()).contains("17.2 kg"));
  save();
  QCOMPARE(nurse_->dialogs().overwrites.size(), 1);
}

void SavingTest::theirsMayBeOpened() {
  iChangeTheHeight();
  theyChangeTheWeight();
  nurse_->dialogs().overwriting = Overwrite::openTheirs;
  save();
  QCOMPARE(weight(), "17.9 kg");
  QCOMPARE(nurse_->dialogs().asked, 0);
  QVERIFY(!nurse_->window().isWindowModified());
}

void SavingTest::mineMayGoElsewhere() {
  theyChangeTheWeight();
  nurse_->dialogs().overwriting = Overwrite::saveElsewhere;
  nurse_->dialogs().save = nurse_->folder() + QStringLiteral("/mine.json");
  save();
  QVERIFY(content(nurse_->dialogs().save).contains("17.2 kg"));
  QVERIFY(content(file()).contains("17.9 kg"));
  QVERIFY(nurse_->window().windowTitle().contains(QStringLiteral("mine.json")));
}

void SavingTest::aDeletedFileIsToldAndMayBeWrittenAgain() {
  QVERIFY(QFile::remove(file()));
  save();
  QVERIFY(nurse_->dialogs().overwrites[0].contains(QStringLiteral("not there any more")));
  QVERIFY(!QFile::exists(file()));
  nurse_->dialogs().overwriting = Overwrite::keepMine;
  save();
  QVERIFY(content(file()).contains("17.2 kg"));
}

void SavingTest::aDamagedFileCannotBeOpenedButWrittenOver() {
  write("half a fi");
  save();
  QVERIFY2(nurse_->dialogs().overwrites[0].contains(QStringLiteral("cannot be read")),
           qPrintable(nurse_->dialogs().overwrites[0]));
  QCOMPARE(weight(), "17.2 kg");
}

void SavingTest::aChangedFileIsAskedAboutWhenTheWindowCloses() {
  iChangeTheHeight();
  theyChangeTheWeight();
  nurse_->dialogs().answer = Unsaved::save;
  QVERIFY(!nurse_->window().close());
  QCOMPARE(nurse_->dialogs().overwrites.size(), 1);
  QVERIFY(content(file()).contains("17.9 kg"));
}

void SavingTest::whyItCannotBeWrittenIsSaidPlainly() {
  nurse_->dialogs().save = nurse_->folder() + QStringLiteral("/no such folder/case.json");
  nurse_->window().findChild<QAction*>(QStringLiteral("save-as"))->trigger();
  QVERIFY2(nurse_->dialogs().told.value(0).contains(QStringLiteral("folder")),
           qPrintable(nurse_->dialogs().told.value(0)));
  QVERIFY(nurse_->dialogs().told.value(0).contains(QStringLiteral("another place")));
}

}  // namespace wardchalk::ui

QTEST_MAIN(wardchalk::ui::SavingTest)
#include "saving_test.moc"
