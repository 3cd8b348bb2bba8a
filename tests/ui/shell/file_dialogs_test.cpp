#include <QApplication>
#include <QDialogButtonBox>
#include <QDir>
#include <QDirIterator>
#include <QFileDialog>
#include <QLineEdit>
#include <QMessageBox>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <functional>
#include <utility>

#include "tests/ui/support/qt_class.h"
#include "ui/shell/dialogs.h"

namespace wardchalk::ui::file_dialogs_test {

/// The desktop's real dialogs for files, answered by a hand at the keyboard.
class FileDialogsTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void init() { QVERIFY(cases_.isValid()); }
  void theEndingIsAddedWhereNoneWasTyped_data();
  void theEndingIsAddedWhereNoneWasTyped();
  void whatWouldBeOverwrittenIsAskedAboutByItsWholeName();
  void aCaseIsNotAskedAboutHere();
  void noFolderOfACaseIsWrittenDown();

 private:
  /// Types a name into the next dialog and accepts it; what it is asked about then.
  QString answer(const QString& name, const std::function<QString()>& ask) {
    asked_.clear();
    pressed_ = nullptr;
    QTimer hand;
    hand.setInterval(10);
    connect(&hand, &QTimer::timeout, this, [&] { actIn(QApplication::activeModalWidget(), name); });
    hand.start();
    return ask();
  }
  void actIn(QWidget* widget, const QString& name) {
    if (auto* question = qobject_cast<QMessageBox*>(widget)) {
      asked_ << question->text();
      question->button(QMessageBox::No)->click();
    } else if (auto* dialog = qobject_cast<QFileDialog*>(widget)) {
      if (!asked_.isEmpty()) return dialog->reject();
      if (std::exchange(pressed_, dialog) == dialog) return;  // one press is on its way
      auto* edit = dialog->findChild<QLineEdit*>(QStringLiteral("fileNameEdit"));
      auto* buttons = dialog->findChild<QDialogButtonBox*>();
      auto* accept = buttons->button(
          dialog->acceptMode() == QFileDialog::AcceptSave ? QDialogButtonBox::Save : QDialogButtonBox::Open);
      // Not from within the timer, which would be still while the question stands that may follow; and in one
      // go, since the dialog writes the proposed name when it has read the folder, which may be late.
      QMetaObject::invokeMethod(
          dialog,
          [edit, accept, name] {
            edit->setText(name);
            accept->click();
          },
          Qt::QueuedConnection);
    }
  }
  FileQuestion asking(FileQuestion::Kind kind, const QString& ending) const {
    return {kind, QStringLiteral("Some files"), QStringLiteral("Some files (*.%1)").arg(ending),
            at(QStringLiteral("open.") + ending)};
  }
  QString at(const QString& name) const { return cases_.filePath(name); }
  void put(const QString& name) const {
    QFile out(at(name));
    QVERIFY(out.open(QIODevice::WriteOnly));
  }

  QTemporaryDir cases_{QDir::tempPath() + QStringLiteral("/plover-ward-7-XXXXXX")};
  QStringList asked_;
  QFileDialog* pressed_ = nullptr;
  DesktopDialogs dialogs_;
};

void FileDialogsTest::theEndingIsAddedWhereNoneWasTyped_data() {
  QTest::addColumn<QString>("typed");
  QTest::addColumn<QString>("ending");
  QTest::addColumn<QString>("name");
  QTest::newRow("none") << "one"
                        << "json"
                        << "one.json";
  QTest::newRow("the same") << "two.json"
                            << "json"
                            << "two.json";
  QTest::newRow("another") << "three.txt"
                           << "json"
                           << "three.txt";
  QTest::newRow("a sheet") << "four"
                           << "pdf"
                           << "four.pdf";
  QTest::newRow("a table") << "six"
                           << "csv"
                           << "six.csv";
}

void FileDialogsTest::theEndingIsAddedWhereNoneWasTyped() {
  QFETCH(QString, typed);
  QFETCH(QString, ending);
  QFETCH(QString, name);
  const QString chosen =
      answer(at(typed), [&] { return dialogs_.file(nullptr, asking(FileQuestion::save, ending)); });
  QCOMPARE(chosen, at(name));
}

void FileDialogsTest::whatWouldBeOverwrittenIsAskedAboutByItsWholeName() {
  put(QStringLiteral("taken.pdf"));
  const QString chosen = answer(at(QStringLiteral("taken")), [&] {
    return dialogs_.file(nullptr, asking(FileQuestion::save, QStringLiteral("pdf")));
  });
  QVERIFY(chosen.isEmpty());
  QVERIFY2(asked_.value(0).contains(QStringLiteral("taken.pdf")), qPrintable(asked_.value(0)));
}

/// The window asks, and tells what stands in the file.
void FileDialogsTest::aCaseIsNotAskedAboutHere() {
  put(QStringLiteral("taken.json"));
  const QString chosen = answer(at(QStringLiteral("taken")), [&] {
    return dialogs_.file(nullptr, asking(FileQuestion::saveAskedLater, QStringLiteral("json")));
  });
  QCOMPARE(chosen, at(QStringLiteral("taken.json")));
  QVERIFY(asked_.isEmpty());
}

/// Neither the folder nor a file of a case stands in any file of the user's home afterwards.
void FileDialogsTest::noFolderOfACaseIsWrittenDown() {
  put(QStringLiteral("open.json"));
  QCOMPARE(answer(at(QStringLiteral("open.json")),
                  [&] { return dialogs_.file(nullptr, asking(FileQuestion::open, QStringLiteral("json"))); }),
           at(QStringLiteral("open.json")));
  QCOMPARE(answer(at(QStringLiteral("saved.json")),
                  [&] {
                    return dialogs_.file(nullptr,
                                         asking(FileQuestion::saveAskedLater, QStringLiteral("json")));
                  }),
           at(QStringLiteral("saved.json")));
  QCOMPARE(answer(at(QStringLiteral("open.json")),
                  [&] {
                    return dialogs_.file(nullptr, asking(FileQuestion::openSeveral, QStringLiteral("json")));
                  }),
           at(QStringLiteral("open.json")));
  QDirIterator all(QDir::homePath(), QDir::Files | QDir::Hidden, QDirIterator::Subdirectories);
  while (all.hasNext()) {
    QFile file(all.next());
    QVERIFY(file.open(QIODevice::ReadOnly));
    const QByteArray content = file.readAll();
    QVERIFY2(!content.contains("plover-ward-7") && !file.fileName().contains(QStringLiteral("plover-ward-7")),
             qPrintable(file.fileName()));
  }
}

namespace {

/// With an empty home, set before anything of Qt looks for it.
int inAHomeOfItsOwn(int argc, char** argv) {
  const QTemporaryDir home;
  qputenv("HOME", home.path().toLocal8Bit());
  for (const char* name : {"XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME", "XDG_STATE_HOME"})
    qunsetenv(name);
  QApplication application(argc, argv);
  FileDialogsTest test;
  return QTest::qExec(&test, argc, argv);
}

}  // namespace

WARDCHALK_QT_TEST_BY(FileDialogsTest, inAHomeOfItsOwn)

}  // namespace wardchalk::ui::file_dialogs_test

#include "file_dialogs_test.moc"
