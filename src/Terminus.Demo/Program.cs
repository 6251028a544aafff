using Terminus.Demo;

var console = new DemoConsole(Console.OpenStandardInput(), StandardOutput.Open(), Console.Error) { IsWatched = !Console.IsErrorRedirected };
return console.Run(args);
