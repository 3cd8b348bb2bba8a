#include "ui/shell/desktop_program.h"

#include <QApplication>
#include <QBuffer>
#include <QCommandLineParser>
#include <QIcon>
#include <QScreen>
#include <QTemporaryDir>
#include <cstdio>
#include <cstring>
#include <iostream>
#include <optional>

#include "core/check/work_out.h"
#include "core/record/case_file.h"
#include "core/record/case_summary.h"
#include "core/record/text_file.h"
#include "core/words/sentences.h"
#include "core/words/visible_text.h"
#include "ui/paper/paint_sheet.h"
#include "ui/shell/display_check.h"
#include "ui/shell/main_window.h"
#include "ui/shell/practice_desk.h"
#include "ui/shell/sheet_desk.h"
#include "ui/theme/desktop_wishes.h"

namespace wardchalk::ui {

namespace {

constexpr int done = 0;
constexpr int unusable = 2;
constexpr QSize pictureSize(1366, 768);

QString tr(const char* text) { return QCoreApplication::translate("CommandLine", text); }

int complain(const QString& text) {
  std::cerr << "wardchalk: " << visibleText(text.toStdString()) << '\n';
  return unusable;
}

int refuse(const QString& file, const Refusal& refusal) {
  return complain(file + QStringLiteral(": ") + QString::fromStdString(placedSentence(refusal)));
}

/// As installed, so that a desktop knows whose windows these are, and the icon for where none is installed.
void nameProgram() {
  QCoreApplication::setApplicationName(QStringLiteral("wardchalk"));
  QGuiApplication::setApplicationDisplayName(QStringLiteral("Wardchalk"));
  QCoreApplication::setApplicationVersion(QStringLiteral(WARDCHALK_VERSION));
  QGuiApplication::setDesktopFileName(QStringLiteral(WARDCHALK_DESKTOP_ID));
  QIcon icon;
  for (const int size : {16, 24, 32, 48, 64, 128, 256})
    icon.addFile(QStringLiteral(":/icon/wardchalk-%1.png").arg(size), QSize(size, size));
  QGuiApplication::setWindowIcon(icon);
}

/// Prints an answer to standard output.
int answer(const QString& text) {
  const std::string bytes = visibleText(text.toStdString());
  if (std::fwrite(bytes.data(), 1, bytes.size(), stdout) == bytes.size() && std::fflush(stdout) == 0)
    return done;
  return complain(tr("standard output cannot be written to."));
}

bool isAskedFor(int argc, char** argv, const char* option) {
  return std::any_of(argv + 1, argv + argc,
                     [&](const char* argument) { return std::strcmp(argument, option) == 0; });
}

/// A picture, a sheet, the version and the help need no display. They are drawn without one, so that they
/// come out alike on every machine; but on Windows, where Qt without a display knows no letters, and where
/// there always is one.
void chooseDisplay([[maybe_unused]] int argc, [[maybe_unused]] char** argv) {
#ifndef Q_OS_WIN
  const bool noWindow = isAskedFor(argc, argv, "--picture") || isAskedFor(argc, argv, "--sheet") ||
                        isAskedFor(argc, argv, "--practice-sheet") || isAskedFor(argc, argv, "--version") ||
                        isAskedFor(argc, argv, "--help") || isAskedFor(argc, argv, "-h") ||
                        isAskedFor(argc, argv, "-v");
  if (noWindow && !qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
#endif
}

/// Whether there is a screen to open a window on; elsewhere than on Linux there always is.
bool hasDisplay() {
#ifdef Q_OS_LINUX
  return qEnvironmentVariableIsSet("QT_QPA_PLATFORM") || !qEnvironmentVariableIsEmpty("DISPLAY") ||
         !qEnvironmentVariableIsEmpty("WAYLAND_DISPLAY");
#else
  return true;
#endif
}

/// Answers nothing and tells the terminal: for pictures, where nobody sits at a window.
class TerminalDialogs : public Dialogs {
 public:
  [[nodiscard]] bool choosePrinter(QWidget*, QPrinter&) override { return false; }
  [[nodiscard]] QStringList files(QWidget*, const FileQuestion&) override { return {}; }
  [[nodiscard]] Unsaved unsaved(QWidget*, const QString&) override { return Unsaved::keep; }
  [[nodiscard]] Overwrite overwrite(QWidget*, const QString&, bool) override { return Overwrite::stop; }
  [[nodiscard]] bool goesOn(QWidget*, const GoOnQuestion&) override { return false; }
  void tell(QWidget*, const QString&, const QString& text) override { complain(text); }
};

/// The window with the case, without a caret or a focus ring, in its usual size.
int takePicture(const QString& caseFile, const QString& picture) {
  const QTemporaryDir folder;
  Settings settings(folder.filePath(QStringLiteral("settings.ini")));
  TerminalDialogs dialogs;
  MainWindow window(exactRules(), settings, dialogs);
  if (!window.openFile(caseFile)) return unusable;
  window.resize(pictureSize);
  window.show();
  QCoreApplication::processEvents();
  if (QWidget* focused = QApplication::focusWidget()) focused->clearFocus();
  QBuffer drawn;
  drawn.open(QIODevice::WriteOnly);
  if (!window.grab().save(&drawn, "PNG")) return complain(tr("%1: the picture cannot be made.").arg(picture));
  const auto written = writeBytes(picture, drawn.data());
  return written ? done : refuse(picture, written.refusal());
}

/// The sheet of a case as a PDF, by the exact rules. Nobody was there to say how a question was settled.
int writeSheet(const QString& caseFile, const QString& pdf, PaperSize paper) {
  const Result<std::string> text = readTextFile(nativePath(caseFile));
  const Result<Case> inputs = text ? readCase(*text) : Result<Case>(text.refusal());
  if (!inputs) return refuse(caseFile, inputs.refusal());
  const Worksheet sheet = workOut(*inputs, exactRules());
  const SheetContent content = sheetContent(sheet, madeNow());
  const auto written = writePdf(pdf, content, paper);
  return written ? done : refuse(pdf, written.refusal());
}

/// Whether a window of the usual size with its frame would reach beyond the screen, and hide the caution
/// below it.
bool isSmall(const QSize& screen) {
  return screen.width() <= pictureSize.width() || screen.height() <= pictureSize.height() + 40;
}

int showWindow(const QStringList& files, bool onBoard) {
  Settings settings;
  DesktopDialogs dialogs;
  DesktopWishes wishes;
  wishes.listen();
  MainWindow window(exactRules(), settings, dialogs);
  if (settings.geometry().isEmpty() && isSmall(window.screen()->availableSize()))
    window.showMaximized();
  else
    window.show();
  const bool opened = !files.isEmpty() && window.openFile(files.first());
  if (onBoard && opened) window.showBoard();
  return QApplication::exec();
}

}  // namespace

int runDesktop(int argc, char** argv) {
  chooseDisplay(argc, argv);
  if (!hasDisplay()) return complainOfNoDisplay();
  std::optional<DisplayCheck> check(std::in_place);
  const QApplication application(argc, argv);
  check.reset();
  nameProgram();
  QCommandLineParser line;
  line.setApplicationDescription(
      tr("Checks a child's dose against the reference you enter and shows the working.\n"
         "Checks only what is typed in; follow local policy, and have a second person check."));
  line.addHelpOption();
  line.addVersionOption();
  const QCommandLineOption picture(QStringLiteral("picture"),
                                   tr("Write a picture of the window: --picture CASE.json OUT.png"));
  line.addOption(picture);
  const QCommandLineOption board(
      QStringLiteral("board"),
      tr("Show the working of a case on a board that fills a screen: --board CASE.json"));
  line.addOption(board);
  const QCommandLineOption sheet(QStringLiteral("sheet"),
                                 tr("Write the printed sheet of a case: --sheet CASE.json OUT.pdf"));
  const QCommandLineOption paper(
      QStringLiteral("paper"),
      tr("Paper of the sheet: a4 (the same on every machine unless asked for) or letter"),
      QStringLiteral("a4|letter"), QStringLiteral("a4"));
  const QCommandLineOption practiceSheet(
      QStringLiteral("practice-sheet"),
      tr("Write the questions of a practice set, or its key: --practice-sheet SET.json OUT.pdf [--key]"));
  const QCommandLineOption key(QStringLiteral("key"),
                               tr("The key of a practice set in place of its questions"));
  line.addOption(sheet);
  line.addOption(practiceSheet);
  line.addOption(key);
  line.addOption(paper);
  line.addPositionalArgument(QStringLiteral("CASE.json"), tr("Case file to open"),
                             QStringLiteral("[CASE.json]"));
  if (!line.parse(QCoreApplication::arguments())) return complain(line.errorText());
  if (line.isSet(QStringLiteral("help"))) return answer(line.helpText());
  if (line.isSet(QStringLiteral("version")))
    return answer(QStringLiteral("wardchalk " WARDCHALK_VERSION "\n"));
  const QStringList files = line.positionalArguments();
  if (files.contains(QStringLiteral("-")))
    return complain(
        tr("- stands for standard input or output, which this program does not use. Name a file; one that "
           "is called - is written ./-"));
  if (files.size() == 2)
    if (const auto apart = checkNotInput(nativePath(files[1]), nativePath(files[0])); !apart)
      return refuse(files[1], apart.refusal());
  if (files.size() != 2 && line.isSet(picture))
    return complain(tr("--picture wants a case file and the name of the picture."));
  if (line.isSet(picture)) return takePicture(files[0], files[1]);
  if (files.size() != 1 && line.isSet(board)) return complain(tr("--board wants a case file."));
  const auto size = paperSizeNamed(line.value(paper));
  if (!size) return complain(tr("--paper is a4 or letter."));
  if (files.size() != 2 && line.isSet(sheet))
    return complain(tr("--sheet wants a case file and the name of the PDF."));
  if (line.isSet(sheet)) return writeSheet(files[0], files[1], *size);
  if (files.size() != 2 && line.isSet(practiceSheet))
    return complain(tr("--practice-sheet wants a set file and the name of the PDF."));
  if (line.isSet(practiceSheet)) {
    const QString wrong = writePracticeSheet(files[0], files[1], line.isSet(key), *size);
    return wrong.isEmpty() ? done : complain(wrong);
  }
  if (files.size() > 1) return complain(tr("One case at a time."));
  return showWindow(files, line.isSet(board));
}

}  // namespace wardchalk::ui
