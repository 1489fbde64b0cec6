// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/printing/report_chunks.h"
#include "app/desktop/look/said.h"

#include <QAbstractTextDocumentLayout>
#include <QPainter>
#include <QTextBlock>
#include <QTextDocument>
#include <QTextLayout>

#include <algorithm>
#include <numeric>

namespace bothways::app::printing {
namespace {

using report::Column;
using report::RowTone;
using report::Tone;

constexpr int kText = 95, kSmall = 80, kVerdict = 125, kTitle = 165;
constexpr double kCellGap = 60.0, kCellPad = 14.0;
constexpr double kPictureScale = 6.2;
constexpr const char* kQuiet = "#5a5a5a";
constexpr const char* kAlarm = "#a33c00";

QString coloured(const QString& html, const char* colour)
{
    return QStringLiteral("<span style=\"color:%1\">%2</span>").arg(QLatin1String(colour), html);
}

/// Where the lines of a text end, from its top.
std::vector<double> lineEnds(const QTextDocument& text)
{
    std::vector<double> ends;
    for (QTextBlock block = text.begin(); block.isValid(); block = block.next()) {
        const double top = text.documentLayout()->blockBoundingRect(block).top();
        for (int i = 0; i < block.layout()->lineCount(); ++i) {
            const QTextLine line = block.layout()->lineAt(i);
            ends.push_back(top + line.y() + line.height());
        }
    }
    return ends;
}

class TextChunk final : public Chunk {
public:
    TextChunk(std::unique_ptr<QTextDocument> text, double indent)
        : m_text(std::move(text)), m_indent(indent)
    {
    }
    double height() const override { return m_text->size().height(); }
    std::vector<double> breaks() const override
    {
        std::vector<double> ends = lineEnds(*m_text);
        ends.push_back(height());
        return ends;
    }
    void paint(QPainter& painter, QPointF at) const override
    {
        painter.save();
        painter.translate(at.x() + m_indent, at.y());
        m_text->drawContents(&painter);
        if (bullet) {
            painter.setPen(Qt::NoPen);
            painter.setBrush(Qt::black);
            painter.drawEllipse(QPointF(-70.0, 0.62 * kText), 13.0, 13.0);
        }
        painter.restore();
        if (underlined) {
            painter.setPen(QPen(QColor("#bbbbbb"), 6.0));
            const double y = at.y() + height() + 8.0;
            painter.drawLine(QPointF(at.x(), y), QPointF(at.x() + m_text->textWidth(), y));
        }
    }
    bool bullet = false, underlined = false;

private:
    std::unique_ptr<QTextDocument> m_text;
    double m_indent;
};

std::shared_ptr<TextChunk> textChunk(const QString& html, double width, int pixels,
                                     double spaceBefore, double indent = 0.0)
{
    auto chunk = std::make_shared<TextChunk>(richText(html, width - indent, pixels), indent);
    chunk->spaceBefore = spaceBefore;
    return chunk;
}

class PictureChunk final : public Chunk {
public:
    PictureChunk(const report::Picture& picture, double width)
        : m_picture(picture), m_scale(std::min(kPictureScale, width / picture.width))
    {
    }
    double height() const override { return m_picture.height * m_scale; }
    void paint(QPainter& painter, QPointF at) const override
    {
        painter.save();
        painter.translate(at);
        painter.scale(m_scale, m_scale);
        for (const report::Mark& mark : m_picture.marks)
            std::visit([&](const auto& one) { draw(painter, one); }, mark);
        painter.restore();
    }

private:
    static void take(QPainter& painter, report::Ink ink)
    {
        const report::Look look = report::lookOf(ink);
        painter.setPen(look.stroke ? QPen(QColor(look.stroke), look.width) : QPen(Qt::NoPen));
        painter.setBrush(look.fill ? QBrush(QColor(look.fill)) : QBrush(Qt::NoBrush));
    }
    static void draw(QPainter& painter, const report::Line& m)
    {
        take(painter, m.ink);
        painter.drawLine(QPointF(m.x1, m.y1), QPointF(m.x2, m.y2));
    }
    static void draw(QPainter& painter, const report::Box& m)
    {
        take(painter, m.ink);
        painter.drawRect(QRectF(m.x, m.y, m.width, m.height));
    }
    static void draw(QPainter& painter, const report::Point& m)
    {
        take(painter, m.ink);
        constexpr double kHalf = report::kHalfDiamond, kSquare = report::kHalfSquare;
        if (m.shape == report::Shape::diamond)
            painter.drawPolygon(QPolygonF{
                {m.x, m.y - kHalf}, {m.x + kHalf, m.y}, {m.x, m.y + kHalf}, {m.x - kHalf, m.y}});
        else if (m.shape == report::Shape::square)
            painter.drawRect(QRectF(m.x - kSquare, m.y - kSquare, 2.0 * kSquare, 2.0 * kSquare));
        else
            painter.drawEllipse(QPointF(m.x, m.y), 5.0, 5.0);
    }
    /// Letters ten times as large in a picture ten times as small: fonts have whole sizes only.
    static void draw(QPainter& painter, const report::Words& m)
    {
        constexpr double kFine = 10.0;
        painter.save();
        painter.translate(m.x, m.y);
        painter.scale(1.0 / kFine, 1.0 / kFine);
        QFont font = painter.font();
        font.setPixelSize(static_cast<int>(report::kLabelSize * kFine));
        font.setBold(m.strong);
        painter.setFont(font);
        painter.setPen(QColor(report::kLabelColour));
        const QString text = nameShown(m.text);
        const double width = QFontMetricsF(font).horizontalAdvance(text);
        const double share = m.anchor == report::Anchor::start    ? 0.0
                             : m.anchor == report::Anchor::middle ? 0.5
                                                                  : 1.0;
        painter.drawText(QPointF(-share * width, 0.0), text);
        painter.restore();
    }

    report::Picture m_picture;
    double m_scale;
};

class RowChunk final : public Chunk {
public:
    RowChunk(const report::Table& table, const std::vector<QString>& cells,
             const std::vector<double>& widths)
        : m_widths(widths)
    {
        for (std::size_t i = 0; i < widths.size(); ++i) {
            const bool number = table.columns[i].kind == Column::number;
            m_cells.push_back(
                richText(cells[i], widths[i], kSmall, number ? Qt::AlignRight : Qt::AlignLeft));
            m_height = std::max(m_height, m_cells.back()->size().height());
        }
    }
    double height() const override { return m_height + 2.0 * kCellPad; }
    std::vector<double> breaks() const override
    {
        std::vector<double> ends;
        for (const auto& cell : m_cells)
            if (cell->size().height() >= m_height)
                for (const double end : lineEnds(*cell))
                    ends.push_back(end + kCellPad);
        ends.push_back(height());
        return ends;
    }
    void paint(QPainter& painter, QPointF at) const override
    {
        double x = at.x();
        for (std::size_t i = 0; i < m_cells.size(); ++i) {
            painter.save();
            painter.translate(x, at.y() + kCellPad);
            m_cells[i]->drawContents(&painter);
            painter.restore();
            x += m_widths[i] + kCellGap;
        }
        painter.setPen(QPen(QColor(isHead ? "#555555" : "#dddddd"), 6.0));
        const double y = at.y() + height();
        painter.drawLine(QPointF(at.x(), y), QPointF(x - kCellGap, y));
    }
    bool isHead = false;

private:
    std::vector<double> m_widths;
    std::vector<std::unique_ptr<QTextDocument>> m_cells;
    double m_height = 0.0;
};

std::vector<QString> cellsOf(const report::Row& row)
{
    std::vector<QString> cells;
    for (std::size_t i = 0; i < row.cells.size(); ++i) {
        QString cell = QString::fromStdString(row.cells[i]);
        if (row.tone == RowTone::strong)
            cell = QStringLiteral("<b>%1</b>").arg(cell);
        else if (row.tone == RowTone::quiet)
            cell = coloured(cell, kQuiet);
        else if (row.tone == RowTone::alarmed && i == 1)
            cell = coloured(QStringLiteral("<b>%1</b>").arg(cell), kAlarm);
        cells.push_back(cell);
    }
    return cells;
}

/// What each column needs on one line; columns of words take what is left, a third at least.
std::vector<double> columnWidths(const report::Table& table,
                                 const std::vector<std::vector<QString>>& lines, double width)
{
    const std::size_t n = table.columns.size();
    std::vector<double> widths(n, 0.0);
    std::size_t ofWords = 0;
    double tight = 0.0;
    for (std::size_t i = 0; i < n; ++i) {
        for (const std::vector<QString>& cells : lines)
            widths[i] = std::max(widths[i], richText(cells[i], -1.0, kSmall)->idealWidth() + 4.0);
        if (table.columns[i].kind == Column::words)
            ++ofWords;
        else
            tight += widths[i];
    }
    const double room = width - kCellGap * static_cast<double>(n - 1);
    const double most = ofWords > 0 ? 2.0 / 3.0 * room : room;
    const double shrink = std::min(1.0, most / std::max(tight, 1.0));
    for (std::size_t i = 0; i < n; ++i)
        if (table.columns[i].kind != Column::words)
            widths[i] *= shrink;
        else
            widths[i] = (room - shrink * tight) / static_cast<double>(ofWords);
    return widths;
}

struct Maker {
    double width;
    std::vector<std::shared_ptr<Chunk>> chunks = {};

    void operator()(const report::Heading& part)
    {
        const bool large = part.level <= 2;
        auto chunk = textChunk(QStringLiteral("<b>%1</b>").arg(QString::fromStdString(part.text)),
                               width, large ? kVerdict - 5 : kText, large ? 200.0 : 110.0);
        chunk->underlined = large;
        chunk->keepWithNext = true;
        chunks.push_back(chunk);
    }
    void operator()(const report::Paragraph& part)
    {
        QString html = QString::fromStdString(part.text);
        int pixels = kText;
        double indent = 0.0;
        switch (part.tone) {
        case Tone::plain: break;
        case Tone::verdict:
            html = QStringLiteral("<b>%1</b>").arg(html);
            pixels = kVerdict;
            break;
        case Tone::quiet: html = coloured(html, kQuiet); break;
        case Tone::formula:
            html = QStringLiteral("<i style=\"font-family:'DejaVu Serif'\">%1</i>").arg(html);
            indent = 120.0;
            break;
        }
        chunks.push_back(textChunk(html, width, pixels, 70.0, indent));
    }
    void operator()(const report::Bullets& part)
    {
        for (const std::string& item : part.items) {
            auto chunk = textChunk(QString::fromStdString(item), width, kText,
                                   &item == &part.items.front() ? 60.0 : 16.0, 150.0);
            chunk->bullet = true;
            chunks.push_back(chunk);
        }
    }
    void operator()(const report::Figure& part)
    {
        auto picture = std::make_shared<PictureChunk>(part.picture, width);
        picture->spaceBefore = 90.0;
        picture->keepWithNext = true;
        chunks.push_back(picture);
        chunks.push_back(
            textChunk(coloured(QString::fromStdString(part.caption), kQuiet), width, kSmall, 20.0));
    }
    void operator()(const report::Table& part)
    {
        std::vector<std::vector<QString>> lines(1);
        for (const report::TableColumn& column : part.columns)
            lines[0].push_back(
                QStringLiteral("<b>%1</b>").arg(QString::fromStdString(column.head)));
        for (const report::Row& row : part.rows)
            lines.push_back(cellsOf(row));
        const std::vector<double> widths = columnWidths(part, lines, width);
        std::shared_ptr<RowChunk> head;
        for (const std::vector<QString>& cells : lines) {
            auto row = std::make_shared<RowChunk>(part, cells, widths);
            if (!head) {
                head = row;
                row->isHead = true;
                row->keepWithNext = true;
                row->spaceBefore = 70.0;
            } else {
                row->repeat = head;
            }
            chunks.push_back(row);
        }
    }
};

} // namespace

std::unique_ptr<QTextDocument> richText(const QString& html, double width, int pixels,
                                        Qt::Alignment alignment)
{
    auto text = std::make_unique<QTextDocument>();
    QFont font(QStringLiteral("DejaVu Sans"));
    font.setPixelSize(pixels);
    font.setHintingPreference(QFont::PreferNoHinting);
    text->setDefaultFont(font);
    text->setDocumentMargin(0.0);
    QTextOption option(alignment);
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    option.setUseDesignMetrics(true);
    text->setDefaultTextOption(option);
    text->setUndoRedoEnabled(false);
    text->setHtml(QStringLiteral("<span style=\"white-space:pre-wrap\">%1</span>").arg(html));
    text->setTextWidth(width);
    return text;
}

std::shared_ptr<Chunk> titleChunk(const std::string& title, double width)
{
    return textChunk(QStringLiteral("<b>%1</b>").arg(QString::fromStdString(title)), width, kTitle,
                     0.0);
}

std::vector<std::shared_ptr<Chunk>> chunksOf(const report::Part& part, double width)
{
    Maker maker{width};
    std::visit(maker, part);
    return std::move(maker.chunks);
}

} // namespace bothways::app::printing
