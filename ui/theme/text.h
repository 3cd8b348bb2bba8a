#pragma once

#include <QString>
#include <QStringList>
#include <string_view>

#include "core/number/refusal.h"

namespace wardchalk::ui {

/// UTF-8 of the core as text of the screen.
[[nodiscard]] QString fromCore(std::string_view text);

/// The same, with a number and the word after it held together by a no-break space, so that "84 mg" never
/// breaks.
[[nodiscard]] QString held(std::string_view text);

/// Text from outside, a name of a file or a title, that stands beside words of ours: isolated where it runs
/// from the right.
[[nodiscard]] QString outside(std::string_view text);
[[nodiscard]] QString outside(const QString& text);

/// Why a file could not be read or written: its name, and below it the place in it and the sentence.
[[nodiscard]] QString refusedFile(const QString& file, const Refusal& refusal);

/// The lines that one text was broken into, each to be set by itself: an isolate that is cut in two is whole
/// on each.
[[nodiscard]] QStringList withWholeIsolates(const QStringList& lines);

/// The text in pieces that are set one after the other: letters of a writing of the East, and what follows
/// them in Latin letters and figures. Qt takes figures for part of the writing before them, and where no font
/// has that writing, draws boxes for both. A text with isolates is one piece: its order is that of the whole.
[[nodiscard]] QStringList piecesByWriting(const QString& text);

/// The same text with places to break in a word that is too long for a line, where a widget breaks lines at
/// blanks alone.
[[nodiscard]] QString breakable(QString text);

/// The beginning and the end of a text that is longer than `most` letters, for where nothing can be broken.
/// The whole of it belongs into a tool tip and into what is spoken.
[[nodiscard]] QString shortened(const QString& text, qsizetype most);

/// A held or breakable text as it was written again, without marks of isolates: what is spoken or searched.
[[nodiscard]] QString loosed(QString text);

}  // namespace wardchalk::ui
