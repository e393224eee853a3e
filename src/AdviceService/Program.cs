using AdviceService.Verbs;

return await CommandLine.RunAsync(args);
