// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/printing/report_pages.h"

#include "app/desktop/printing/report_chunks.h"
#include "app/output/version.h"

#include <QBuffer>
#include <QFontMetricsF>
#include <QPageLayout>
#include <QPainter>
#include <QPdfWriter>
#include <QPrinter>
#include <QTextDocument>
#include <QTextDocumentFragment>

#include <algorithm>

namespace bothways::app {
namespace {

using printing::Chunk;

constexpr double kMargin = 430.0;            // some 15 mm
constexpr double kTop = kMargin + 150.0;     // below the page's head
constexpr double kHeadLine = kMargin + 70.0; // base line of the head
constexpr int kHeadSize = 65;

/// A chunk, or a slice of one that is taller than a page.
struct Placed {
    std::shared_ptr<const Chunk> chunk;
    double y = 0.0;
    double from = 0.0, to = 0.0;
};

/// Puts chunks onto pages, one after the other.
class Paginator {
public:
    explicit Paginator(double bottom) : m_bottom(bottom) { newPage(); }

    void place(const std::vector<std::shared_ptr<Chunk>>& chunks)
    {
        for (std::size_t i = 0; i < chunks.size(); ++i) {
            if (m_y > kTop && m_y + needed(chunks, i) > m_bottom)
                newPage();
            placeOne(chunks[i]);
        }
    }
    std::vector<std::vector<Placed>> take() && { return std::move(m_pages); }

private:
    void newPage()
    {
        m_pages.emplace_back();
        m_y = kTop;
    }

    /// Height of a chunk and of those that it must stay with; no more than a page, or it would be
    /// for ever on the next one.
    double needed(const std::vector<std::shared_ptr<Chunk>>& chunks, std::size_t i) const
    {
        double sum = chunks[i]->spaceBefore + chunks[i]->height();
        while (chunks[i]->keepWithNext && i + 1 < chunks.size()) {
            ++i;
            sum += chunks[i]->spaceBefore + chunks[i]->height();
        }
        return std::min(sum, m_bottom - kTop);
    }

    void placeOne(const std::shared_ptr<Chunk>& chunk)
    {
        if (m_y > kTop)
            m_y += chunk->spaceBefore;
        else if (chunk->repeat)
            put(chunk->repeat, 0.0, chunk->repeat->height());
        double from = 0.0;
        double last = 0.0;
        if (m_y + chunk->height() > m_bottom)
            for (const double end : chunk->breaks()) {
                if (m_y + end - from > m_bottom && last > from) {
                    put(chunk, from, last);
                    newPage();
                    from = last;
                }
                last = end;
            }
        put(chunk, from, chunk->height());
    }

    void put(const std::shared_ptr<const Chunk>& chunk, double from, double to)
    {
        m_pages.back().push_back({chunk, m_y, from, to});
        m_y += to - from;
    }

    double m_bottom;
    double m_y = 0.0;
    std::vector<std::vector<Placed>> m_pages;
};

} // namespace

struct ReportPages::Layout {
    QSizeF size;
    QString title, checksum;
    std::vector<std::vector<Placed>> pages;

    void paintHeadAndFoot(QPainter& painter, int page) const
    {
        QFont font(QStringLiteral("DejaVu Sans"));
        font.setPixelSize(kHeadSize);
        painter.setFont(font);
        painter.setPen(QColor("#555555"));
        const QFontMetricsF metrics(font);
        const double right = size.width() - kMargin;
        const QString sum = QStringLiteral("SHA-256 %1").arg(checksum);
        const double sumWidth = metrics.horizontalAdvance(sum);
        painter.drawText(QPointF(right - sumWidth, kHeadLine), sum);
        painter.drawText(QPointF(kMargin, kHeadLine),
                         metrics.elidedText(title, Qt::ElideRight,
                                            std::max(0.0, right - sumWidth - kMargin - 100.0)));
        const QString number = QStringLiteral("%1 of %2").arg(page + 1).arg(pages.size());
        painter.drawText(
            QPointF(right - metrics.horizontalAdvance(number), size.height() - kMargin), number);
    }
};

ReportPages::ReportPages(const ReportInput& input, const QPageSize& size)
    : m_layout(std::make_unique<Layout>())
{
    const report::Report report = report::makeReport(input);
    m_layout->size = size.size(QPageSize::Inch) * kUnitsPerInch;
    m_layout->title =
        QTextDocumentFragment::fromHtml(QString::fromStdString(report.title)).toPlainText();
    m_layout->checksum = QString::fromStdString(report.checksum);
    const double width = m_layout->size.width() - 2.0 * kMargin;
    std::vector<std::shared_ptr<Chunk>> chunks{printing::titleChunk(report.title, width)};
    for (const report::Part& part : report.parts)
        for (auto& chunk : printing::chunksOf(part, width))
            chunks.push_back(std::move(chunk));
    Paginator paginator(m_layout->size.height() - kMargin - 130.0);
    paginator.place(chunks);
    m_layout->pages = std::move(paginator).take();
}

ReportPages::~ReportPages() = default;
ReportPages::ReportPages(ReportPages&&) noexcept = default;

int ReportPages::count() const
{
    return static_cast<int>(m_layout->pages.size());
}

QSizeF ReportPages::size() const
{
    return m_layout->size;
}

QString ReportPages::title() const
{
    return m_layout->title;
}

void ReportPages::paint(QPainter& painter, int page) const
{
    painter.save();
    m_layout->paintHeadAndFoot(painter, page);
    painter.setFont(QFont(QStringLiteral("DejaVu Sans")));
    for (const Placed& placed : m_layout->pages[static_cast<std::size_t>(page)]) {
        painter.save();
        if (placed.from > 0.0 || placed.to < placed.chunk->height())
            painter.setClipRect(
                QRectF(0.0, placed.y, m_layout->size.width(), placed.to - placed.from));
        placed.chunk->paint(painter, QPointF(kMargin, placed.y - placed.from));
        painter.restore();
    }
    painter.restore();
}

bool printReportOn(QPrinter& printer, const ReportInput& input)
{
    printer.setFullPage(true);
    const ReportPages pages(input, printer.pageLayout().pageSize());
    const int first = printer.fromPage() > 0 ? printer.fromPage() - 1 : 0;
    const int last =
        printer.toPage() > 0 ? std::min(printer.toPage(), pages.count()) : pages.count();
    QPainter painter;
    if (!painter.begin(&printer))
        return false;
    const double scale = printer.resolution() / ReportPages::kUnitsPerInch;
    painter.scale(scale, scale);
    for (int page = first; page < last; ++page) {
        if (page > first && !printer.newPage())
            return false;
        pages.paint(painter, page);
    }
    return painter.end();
}

QByteArray reportPdf(const ReportPages& pages, const QPageSize& size)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer(&buffer);
        writer.setResolution(static_cast<int>(ReportPages::kUnitsPerInch));
        writer.setPageLayout(QPageLayout(size, QPageLayout::Portrait, QMarginsF()));
        writer.setTitle(pages.title());
        writer.setCreator(QStringLiteral("Bothways %1").arg(QLatin1String(kVersion)));
        QPainter painter(&writer);
        for (int page = 0; page < pages.count(); ++page) {
            if (page > 0)
                writer.newPage();
            pages.paint(painter, page);
        }
    }
    return bytes;
}

} // namespace bothways::app
