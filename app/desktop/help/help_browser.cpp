// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/help/help_browser.h"

#include "app/desktop/look/theme.h"
#include "app/output/role_colours.h"

#include <QBuffer>
#include <QEvent>
#include <QFile>
#include <QImageReader>
#include <QScrollBar>
#include <QTextBlock>
#include <QTextTable>

#include <algorithm>
#include <utility>

namespace bothways::app {
namespace {

constexpr int kLettersInALine = 92;
constexpr double kPictureLetter_px = 15.0; // the letters of our pictures, at their own size
constexpr int kAir = 20;

/// Colours of the pictures on white paper, and what they become on dark.
constexpr std::pair<const char*, const char*> kNight[] = {
    {"#ffffff", "#1f2329"},
    {"#333333", "#e8eaed"},
    {"#000000", "#ffffff"},
    {"#666666", "#a6aeb8"},
    {"#888888", "#8c95a0"},
    {"#bbbbbb", "#59626d"},
    {"#f0f0f0", "#2a3038"},
    {"#eaf4fb", "#22384a"},
    {roles::kDeviceShade, "#44311f"},
    {roles::kBaseline.light, roles::kBaseline.night},
    {roles::kDevice.light, roles::kDevice.night},
    {roles::kHolds.light, roles::kHolds.night}};

} // namespace

QByteArray inColoursOf(const QPalette& palette, QByteArray svg)
{
    if (!Theme::of(palette).dark)
        return svg;
    for (const auto& [day, night] : kNight)
        svg.replace(day, night);
    return svg;
}

HelpBrowser::HelpBrowser(QWidget* parent) : QTextBrowser(parent)
{
    setObjectName("helpPage");
    setAccessibleName(tr("Page of the handbook"));
    setOpenLinks(false);
    setFrameShape(QFrame::NoFrame);
    setTextInteractionFlags(Qt::TextBrowserInteraction);
    document()->setDocumentMargin(kAir);
    connect(this, &QTextBrowser::anchorClicked, this,
            [this](const QUrl& url) { emit linkFollowed(url.toString()); });
}

void HelpBrowser::showPage(const HandbookPage& page)
{
    m_page = page;
    m_marked.clear();
    setExtraSelections({});
    layOut();
    scrollToSection({});
}

void HelpBrowser::layOut()
{
    document()->setDefaultFont(font());
    setMarkdown(m_page.markdown);
    dressBlocks();
    dressTables(document()->rootFrame());
    fitWidth();
}

void HelpBrowser::dressBlocks()
{
    const int em = fontMetrics().height();
    QTextCursor cursor(document());
    auto section = m_page.sections.cbegin();
    for (QTextBlock block = document()->begin(); block.isValid(); block = block.next()) {
        cursor.setPosition(block.position());
        QTextBlockFormat format = block.blockFormat();
        const bool inTable = cursor.currentTable() != nullptr;
        const bool picture = block.text() == QString(QChar::ObjectReplacementCharacter);
        format.setLineHeight(picture   ? 100
                             : inTable ? 115
                                       : 130,
                             QTextBlockFormat::ProportionalHeight);
        if (const int level = format.headingLevel(); level > 0) {
            format.setTopMargin(level == 1 ? 0.0 : 1.1 * em);
            format.setBottomMargin(0.4 * em);
            format.setLineHeight(100, QTextBlockFormat::ProportionalHeight);
            cursor.movePosition(QTextCursor::EndOfBlock, QTextCursor::KeepAnchor);
            QTextCharFormat letters;
            letters.setFontWeight(QFont::DemiBold);
            letters.setProperty(QTextFormat::FontSizeAdjustment, level == 1   ? 3
                                                                 : level == 2 ? 2
                                                                              : 1);
            if (section != m_page.sections.cend()) {
                letters.setAnchor(true);
                letters.setAnchorNames({(section++)->anchor});
            }
            cursor.mergeCharFormat(letters);
        } else if (!inTable) {
            format.setTopMargin(0.0);
            format.setBottomMargin(block.textList() ? 0.3 * em : 0.6 * em);
        }
        cursor.setPosition(block.position());
        cursor.setBlockFormat(format);
    }
}

void HelpBrowser::dressTables(QTextFrame* frame)
{
    const Theme theme = Theme::of(palette());
    for (QTextFrame* child : frame->childFrames()) {
        auto* table = qobject_cast<QTextTable*>(child);
        if (!table) {
            dressTables(child);
            continue;
        }
        QTextTableFormat format = table->format();
        format.setBorder(1.0);
        format.setBorderStyle(QTextFrameFormat::BorderStyle_Solid);
        format.setBorderBrush(theme.grid);
        format.setBorderCollapse(true);
        format.setCellPadding(5.0);
        format.setCellSpacing(0.0);
        format.setTopMargin(4.0);
        format.setBottomMargin(14.0);
        format.setHeaderRowCount(1);
        table->setFormat(format);
        for (int column = 0; column < table->columns(); ++column) {
            QTextTableCell cell = table->cellAt(0, column);
            QTextCharFormat head = cell.format();
            head.setBackground(theme.window);
            cell.setFormat(head);
            QTextCursor cursor = cell.firstCursorPosition();
            cursor.movePosition(QTextCursor::EndOfBlock, QTextCursor::KeepAnchor);
            QTextCharFormat bold;
            bold.setFontWeight(QFont::DemiBold);
            cursor.mergeCharFormat(bold);
        }
    }
}

QVariant HelpBrowser::loadResource(int type, const QUrl& name)
{
    if (type != QTextDocument::ImageResource)
        return QTextBrowser::loadResource(type, name);
    QFile file(":/help/" + m_page.folder + name.toString());
    if (!file.open(QIODevice::ReadOnly))
        return {};
    QByteArray svg = inColoursOf(palette(), file.readAll());
    QBuffer buffer(&svg);
    QImageReader reader(&buffer, "svg");
    const double scale = fontInfo().pixelSize() / kPictureLetter_px;
    const double dots = devicePixelRatioF();
    reader.setScaledSize((reader.size().toSizeF() * scale * dots).toSize());
    QImage image = reader.read();
    image.setDevicePixelRatio(dots);
    return image;
}

/// Pictures as wide as their letters are as large as the text's, or as the page where that is
/// narrower.
void HelpBrowser::fitPictures()
{
    const double room = document()->textWidth() - 2.0 * document()->documentMargin();
    QTextCursor cursor(document());
    for (QTextBlock block = document()->begin(); block.isValid(); block = block.next())
        for (auto it = block.begin(); !it.atEnd(); ++it) {
            const QTextFragment fragment = it.fragment();
            if (!fragment.charFormat().isImageFormat())
                continue;
            QTextImageFormat format = fragment.charFormat().toImageFormat();
            const auto image = document()
                                   ->resource(QTextDocument::ImageResource, QUrl(format.name()))
                                   .value<QImage>();
            if (image.isNull())
                continue;
            const QSizeF own = image.deviceIndependentSize();
            const double width = std::min(own.width(), room);
            if (format.width() == width)
                continue;
            format.setWidth(width);
            format.setHeight(width * own.height() / own.width());
            format.setToolTip(format.stringProperty(QTextFormat::ImageAltText));
            cursor.setPosition(fragment.position());
            cursor.setPosition(fragment.position() + fragment.length(), QTextCursor::KeepAnchor);
            cursor.setCharFormat(format);
            break; // the block is another one now; our pictures stand alone in theirs
        }
}

void HelpBrowser::fitWidth()
{
    const int widest = kLettersInALine * fontMetrics().averageCharWidth() + 2 * kAir;
    setLineWrapMode(QTextEdit::FixedPixelWidth);
    setLineWrapColumnOrWidth(std::max(160, std::min(viewport()->width(), widest)));
    fitPictures();
}

void HelpBrowser::resizeEvent(QResizeEvent* event)
{
    QTextBrowser::resizeEvent(event);
    fitWidth();
}

void HelpBrowser::changeEvent(QEvent* event)
{
    QTextBrowser::changeEvent(event);
    if (m_page.name.isEmpty() ||
        (event->type() != QEvent::FontChange && event->type() != QEvent::PaletteChange))
        return;
    const int at = verticalScrollBar()->value();
    document()->clear(); // with it the pictures of the other colours
    layOut();
    markAll(m_marked);
    verticalScrollBar()->setValue(at);
}

void HelpBrowser::scrollToSection(const QString& anchor)
{
    if (anchor.isEmpty() || !m_page.section(anchor)) {
        moveCursor(QTextCursor::Start);
        verticalScrollBar()->setValue(0);
        return;
    }
    scrollToAnchor(anchor);
}

int HelpBrowser::markAll(const QString& text)
{
    m_marked = text;
    QList<QTextEdit::ExtraSelection> marks;
    if (!text.isEmpty()) {
        const Theme theme = Theme::of(palette());
        for (QTextCursor found = document()->find(text); !found.isNull();
             found = document()->find(text, found)) {
            QTextCharFormat format;
            format.setBackground(theme.margin);
            marks += {found, format};
        }
    }
    setExtraSelections(marks);
    return static_cast<int>(marks.size());
}

bool HelpBrowser::findNext(const QString& text, bool backward)
{
    if (text.isEmpty())
        return false;
    const auto flags = backward ? QTextDocument::FindBackward : QTextDocument::FindFlags();
    if (find(text, flags))
        return true;
    moveCursor(backward ? QTextCursor::End : QTextCursor::Start);
    return find(text, flags);
}

} // namespace bothways::app
